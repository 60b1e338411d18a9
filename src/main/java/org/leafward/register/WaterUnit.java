package org.leafward.register;

/**
 * What an amount of water is given in. Factors: NIST Special Publication 811, appendix B
 * (inch, foot and US gallon are exact).
 */
public enum WaterUnit {

	/** Depth, mm: the same as litres for each square metre. */
	MM("mm deep", 1, false),

	/** Depth, inches. */
	INCHES("inches deep", 25.4, false),

	/** Litres over an area in square metres. */
	LITRES("litres over an area in m²", 1, true),

	/** US gallons over an area in square feet. */
	GALLONS("US gallons over an area in square feet", 3.785411784 / (0.3048 * 0.3048), true);

	private final String words;

	private final double millimetres;

	private final boolean volume;

	WaterUnit(String words, double millimetres, boolean volume) {
		this.words = words;
		this.millimetres = millimetres;
		this.volume = volume;
	}

	public String words() {
		return this.words;
	}

	/**
	 * Whether it is a volume, which needs an area.
	 * @return false for depths
	 */
	public boolean volume() {
		return this.volume;
	}

	/**
	 * The depth of an amount.
	 * @param amount in this unit
	 * @param area m² for litres, square feet for gallons; not looked at for depths
	 * @return mm
	 */
	public double millimetres(double amount, double area) {
		return amount * this.millimetres / (this.volume ? area : 1);
	}

}
