/** A day at the machines as it is told: times of day, sentences, bars. */
package bandwright.pipeline.write.day;
