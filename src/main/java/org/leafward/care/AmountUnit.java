package org.leafward.care;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.register.WaterUnit;

/** What an amount in the care log is given in. */
public enum AmountUnit {

	/** Depth of water, mm. */
	MM("mm", WaterUnit.MM),

	/** Depth of water, inches. */
	INCHES("in", WaterUnit.INCHES),

	/** Volume. */
	LITRES("litres", WaterUnit.LITRES),

	/** US gallons. */
	GALLONS("US gallons", WaterUnit.GALLONS),

	/** Weight. */
	KILOGRAMS("kg", null),

	/** Weight, avoirdupois. */
	POUNDS("lb", null),

	/** Bags, barrows, loads. */
	BAGS("bags", null),

	/** Plants, bulbs, cuttings. */
	PIECES("pieces", null),

	/** Time that the work took. */
	MINUTES("minutes", null);

	private final String words;

	private final @Nullable WaterUnit water;

	AmountUnit(String words, @Nullable WaterUnit water) {
		this.words = words;
		this.water = water;
	}

	/**
	 * The name used by the API.
	 * @return in lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	/**
	 * The unit for readers, behind a number.
	 * @return for example "mm"
	 */
	public String words() {
		return this.words;
	}

	/**
	 * The unit of a watering.
	 * @return null when water isn't given in it
	 */
	public @Nullable WaterUnit water() {
		return this.water;
	}

}
