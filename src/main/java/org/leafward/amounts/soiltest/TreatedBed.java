package org.leafward.amounts.soiltest;

import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Drainage;

/**
 * A bed whose soil was tested.
 *
 * @param squareMetres its area, 0.01 to 100,000
 * @param depthMetres depth of soil to treat, m, 0.05 to 1; that of the test as a rule
 * @param drainage how water leaves it
 */
public record TreatedBed(double squareMetres, double depthMetres, Drainage drainage) {

	public TreatedBed {
		Quantity.within("area", "area in square metres", squareMetres, 0.01, 100_000);
		Quantity.within("depth", "depth in centimetres", depthMetres * 100, 5, 100);
	}

}
