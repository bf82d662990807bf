/** What a row orders: its own sku and design, or what products.csv says of its listing. */
@NullMarked
package bandwright.pipeline.intake.listing;

import org.jspecify.annotations.NullMarked;
