package org.leafward.amounts.soiltest;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * What a laboratory says about salt and sodium in a soil.
 *
 * @param acidity pH, 2 to 12
 * @param conductivity electrical conductivity
 * @param exchangeable exchangeable sodium percentage ESP, %, 0 to 70
 * @param ratio the SAR from which that was worked out, or null where ESP was measured
 * @param exchange cation exchange capacity CEC, cmol/kg, the same as meq/100 g, 0.5 to
 * 100, or null where nobody measured
 */
public record SoilTest(double acidity, Conductivity conductivity, double exchangeable, @Nullable Double ratio,
		@Nullable Double exchange) {

	public SoilTest {
		Quantity.within("ph", "pH", acidity, 2, 12);
		Quantity.within("esp", "ESP", exchangeable, 0, 70);
		if (exchange != null) {
			Quantity.within("cec", "CEC", exchange, 0.5, 100);
		}
	}

	/**
	 * A test with the sodium adsorption ratio.
	 * @param acidity pH
	 * @param conductivity electrical conductivity
	 * @param ratio SAR of the saturated paste, 0 to 160
	 * @param exchange CEC or null
	 * @return the test
	 */
	public static SoilTest ofRatio(double acidity, Conductivity conductivity, double ratio, @Nullable Double exchange) {
		double percent = Sodium.exchangeable(Quantity.within("sar", "SAR", ratio, 0, 150));
		return new SoilTest(acidity, conductivity, percent, ratio, exchange);
	}

	/**
	 * Its class.
	 * @return by conductivity and sodium
	 */
	public SoilClass soilClass() {
		return SoilClass.of(this.conductivity.saturated(), this.exchangeable);
	}

	/**
	 * How the class came about.
	 * @return a step
	 */
	public Explanation explanation() {
		List<Explanation> steps = new ArrayList<>();
		steps.add(this.conductivity.explanation());
		Explanation sodium = Explanation.of("Exchangeable sodium", percent(this.exchangeable));
		steps.add((this.ratio != null) ? sodium.withDetail("From an SAR of " + NumberWords.fixed(this.ratio, 1) + ".")
			.withSource(Sodium.SOURCE) : sodium.withDetail("As the laboratory gives it."));
		steps.add(Explanation.of("pH", NumberWords.fixed(this.acidity, 1)).withDetail(acidityWords()));
		return Explanation.of("Class", soilClass().words())
			.withDetail("Saline from 4 dS/m in the saturated paste on, sodic from 15 % exchangeable sodium on.")
			.withSource(SoilClass.SOURCE)
			.withSteps(steps);
	}

	private String acidityWords() {
		if (this.acidity >= SoilClass.ALKALINE_FROM && !soilClass().sodic()) {
			return "So high a pH mostly goes with sodium: have the sodium measured again.";
		}
		return "It doesn’t decide the class; above 8.5 sodium is likely.";
	}

	static String percent(double value) {
		return NumberWords.fixed(value, 1) + " %";
	}

}
