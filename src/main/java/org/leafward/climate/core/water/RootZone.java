package org.leafward.climate.core.water;

/**
 * The soil that roots reach, as a store of water.
 *
 * @param available total available water TAW, mm, above 0 to 2000
 * @param fraction part p that can be used without stress at a loss of 5 mm a day, 0.1 to
 * 0.8
 * @param adjusted whether p is adjusted to the loss of each day
 * @param runoff part of the rain that runs off, 0 to 1
 * @param salt part of the loss of water that salt leaves, 0 to 1
 */
public record RootZone(double available, double fraction, boolean adjusted, double runoff, double salt) {

	public RootZone {
		Bounds.check("available water in mm", available, 0.1, 2000);
		Bounds.check("depletion fraction", fraction, 0.1, 0.8);
		Bounds.check("runoff", runoff, 0, 1);
		Bounds.check("salt stress", salt, 0, 1);
	}

	/**
	 * A root zone on level ground without salt, p adjusted each day.
	 * @param texture of the soil, with the middle of its range
	 * @param depth of the roots, m, 0.01 to 5
	 * @param fraction part p, 0.1 to 0.8
	 * @return the root zone
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static RootZone of(TextureClass texture, double depth, double fraction) {
		Bounds.check("depth of the roots in m", depth, 0.01, 5);
		return new RootZone(texture.availablePerMetre() * depth, fraction, true, 0, 1);
	}

	/**
	 * The same with a part of the rain running off.
	 * @param part 0 to 1
	 * @return the root zone
	 * @throws IllegalArgumentException when the part is out of its bounds
	 */
	public RootZone withRunoff(double part) {
		return new RootZone(this.available, this.fraction, this.adjusted, part, this.salt);
	}

	/**
	 * Readily available water RAW, equation 83 of FAO-56, at a loss of 5 mm a day.
	 * @return mm
	 */
	public double readily() {
		return this.fraction * this.available;
	}

}
