package org.leafward.amounts.soiltest;

/**
 * Soils by salt and sodium, after USDA Agriculture Handbook 60: salty from 4 dS/m on in
 * the saturated paste, rich in sodium from an exchangeable sodium percentage of 15 on.
 * Values on a limit go to the worse class. The pH, below 8.5 as a rule but for sodic
 * soil, doesn't decide.
 */
public enum SoilClass {

	/** Neither. */
	NORMAL("normal"),

	/** Salty, without much sodium. */
	SALINE("saline"),

	/** Rich in sodium, without much other salt. */
	SODIC("sodic"),

	/** Both. */
	SALINE_SODIC("saline-sodic");

	/** Conductivity from which on a soil is saline, dS/m. */
	public static final double SALINE_FROM = 4;

	/** Exchangeable sodium from which on a soil is sodic, %. */
	public static final double SODIC_FROM = 15;

	/** pH above which sodium is likely. */
	public static final double ALKALINE_FROM = 8.5;

	/** Where the limits come from. */
	public static final String SOURCE = "limits of USDA Agriculture Handbook 60, read on a botany page and in an NRCS "
			+ "report, not in the handbook itself";

	private final String words;

	SoilClass(String words) {
		this.words = words;
	}

	/**
	 * The class of a soil.
	 * @param conductivity of the saturated paste, dS/m
	 * @param exchangeable ESP, %
	 * @return the class
	 */
	public static SoilClass of(double conductivity, double exchangeable) {
		boolean saline = conductivity >= SALINE_FROM;
		return (exchangeable >= SODIC_FROM) ? (saline ? SALINE_SODIC : SODIC) : (saline ? SALINE : NORMAL);
	}

	public String words() {
		return this.words;
	}

	public boolean saline() {
		return this == SALINE || this == SALINE_SODIC;
	}

	public boolean sodic() {
		return this == SODIC || this == SALINE_SODIC;
	}

}
