package org.leafward.climate.core.water;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;

/**
 * Soil by texture, coarse to fine, after the triangle of USDA, with the water it holds.
 * <p>
 * Source: FAO Irrigation and Drainage Paper 56, table 19, which gives ranges. Clay loam
 * is not in it; the row of silty clay loam, which lies beside it in the triangle, stands
 * in (our choice). Sandy clay and sandy clay loam are not in it either and are left out.
 */
public enum TextureClass {

	/** Sand. */
	SAND(0.07, 0.17, 0.02, 0.07, 0.05, 0.11, 2, 7, 6, 12),

	/** Loamy sand. */
	LOAMY_SAND(0.11, 0.19, 0.03, 0.10, 0.06, 0.12, 4, 8, 9, 14),

	/** Sandy loam. */
	SANDY_LOAM(0.18, 0.28, 0.06, 0.16, 0.11, 0.15, 6, 10, 15, 20),

	/** Loam. */
	LOAM(0.20, 0.30, 0.07, 0.17, 0.13, 0.18, 8, 10, 16, 22),

	/** Silt loam. */
	SILT_LOAM(0.22, 0.36, 0.09, 0.21, 0.13, 0.19, 8, 11, 18, 25),

	/** Silt. */
	SILT(0.28, 0.36, 0.12, 0.22, 0.16, 0.20, 8, 11, 22, 26),

	/** Clay loam: the row of silty clay loam. */
	CLAY_LOAM(0.30, 0.37, 0.17, 0.24, 0.13, 0.18, 8, 11, 22, 27),

	/** Silty clay loam, "silt clay loam" in the table. */
	SILTY_CLAY_LOAM(0.30, 0.37, 0.17, 0.24, 0.13, 0.18, 8, 11, 22, 27),

	/** Silty clay. */
	SILTY_CLAY(0.30, 0.42, 0.17, 0.29, 0.13, 0.19, 8, 12, 22, 28),

	/** Clay. */
	CLAY(0.32, 0.40, 0.20, 0.24, 0.12, 0.20, 8, 12, 22, 29);

	private final Range fieldCapacity;

	private final Range wiltingPoint;

	private final Range available;

	private final Range readilyEvaporable;

	private final Range evaporable;

	TextureClass(double... row) {
		this.fieldCapacity = new Range(row[0], row[1]);
		this.wiltingPoint = new Range(row[2], row[3]);
		this.available = new Range(row[4], row[5]);
		this.readilyEvaporable = new Range(row[6], row[7]);
		this.evaporable = new Range(row[8], row[9]);
	}

	/**
	 * The class with a name.
	 * @param name for example "silt loam"; case, blanks, hyphens and underscores don't
	 * matter
	 * @return the class
	 * @throws BadInput when there is none of that name
	 */
	public static TextureClass named(String name) {
		String wanted = name.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
		return Arrays.stream(values())
			.filter((texture) -> texture.name().equals(wanted))
			.findFirst()
			.orElseThrow(() -> new BadInput("soil '%s' is unknown".formatted(name), "soil", "write one of: "
					+ Arrays.stream(values()).map(TextureClass::words).collect(Collectors.joining(", "))));
	}

	/**
	 * The name for readers.
	 * @return for example "silt loam"
	 */
	public String words() {
		return name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/**
	 * Water at field capacity.
	 * @return m³/m³
	 */
	public Range fieldCapacity() {
		return this.fieldCapacity;
	}

	/**
	 * Water at the wilting point.
	 * @return m³/m³
	 */
	public Range wiltingPoint() {
		return this.wiltingPoint;
	}

	/**
	 * Water between the two. They go together, so this is narrower than their difference.
	 * @return m³/m³
	 */
	public Range available() {
		return this.available;
	}

	/**
	 * Available water of the middle of the range.
	 * @return mm per m of depth
	 */
	public double availablePerMetre() {
		return this.available.middle() * 1000;
	}

	/**
	 * Readily evaporable water REW of the surface layer.
	 * @return mm
	 */
	public Range readilyEvaporable() {
		return this.readilyEvaporable;
	}

	/**
	 * Evaporable water TEW of a surface layer of 0.10 m.
	 * @return mm
	 */
	public Range evaporable() {
		return this.evaporable;
	}

	/**
	 * A range of values.
	 *
	 * @param low lowest
	 * @param high highest
	 */
	public record Range(double low, double high) {

		public double middle() {
			return (this.low + this.high) / 2;
		}

	}

}
