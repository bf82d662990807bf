/** The hours of the shop. */
package bandwright.rules.day;
