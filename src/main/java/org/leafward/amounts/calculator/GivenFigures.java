package org.leafward.amounts.calculator;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.light.StartingLight;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.TreatedBed;

/**
 * What somebody told a calculator of their plants and their ground, read and in one unit
 * each; null where it wasn't told or the calculator doesn't ask.
 *
 * @param squareMetres area of the bed, m²
 * @param calliperMillimetres thickness of one trunk, mm
 * @param potLitres volume of one pot, l
 * @param litresPerMinute what the hose gives, l/min
 * @param texture of the soil, for example "clay loam", where the answer hangs on it
 * @param plantedOn the day of planting, for seedlings that of setting out
 * @param light where it stands now, before it goes out
 * @param deIcing whether de-icing salt reaches it; never null
 * @param soil a test of the soil
 * @param bed the bed from which the test was taken
 */
public record GivenFigures(@Nullable Double squareMetres, @Nullable Double calliperMillimetres,
		@Nullable Double potLitres, @Nullable Double litresPerMinute, @Nullable String texture,
		@Nullable LocalDate plantedOn, @Nullable StartingLight light, boolean deIcing, @Nullable SoilTest soil,
		@Nullable TreatedBed bed) {

	/**
	 * Figures of a bed.
	 * @param squareMetres its area
	 * @param litresPerMinute what the hose gives
	 * @param texture of its soil
	 * @return the figures
	 */
	public static GivenFigures ofBed(@Nullable Double squareMetres, @Nullable Double litresPerMinute,
			@Nullable String texture) {
		return new GivenFigures(squareMetres, null, null, litresPerMinute, texture, null, null, false, null, null);
	}

	/**
	 * Figures of a tree.
	 * @param calliperMillimetres thickness of its trunk
	 * @param litresPerMinute what the hose gives
	 * @param plantedOn the day on which it was planted
	 * @return the figures
	 */
	public static GivenFigures ofTree(@Nullable Double calliperMillimetres, @Nullable Double litresPerMinute,
			@Nullable LocalDate plantedOn) {
		return new GivenFigures(null, calliperMillimetres, null, litresPerMinute, null, plantedOn, null, false, null,
				null);
	}

	/**
	 * Figures of a pot.
	 * @param potLitres its volume
	 * @param litresPerMinute what the hose gives
	 * @return the figures
	 */
	public static GivenFigures ofPot(@Nullable Double potLitres, @Nullable Double litresPerMinute) {
		return new GivenFigures(null, null, potLitres, litresPerMinute, null, null, null, false, null, null);
	}

	/**
	 * Figures of a bed with salt.
	 * @param squareMetres its area
	 * @param deIcing whether de-icing salt reaches it
	 * @return the figures
	 */
	public static GivenFigures ofSalt(@Nullable Double squareMetres, boolean deIcing) {
		return new GivenFigures(squareMetres, null, null, null, null, null, null, deIcing, null, null);
	}

	/**
	 * Figures of plants that go out.
	 * @param light where they stand now
	 * @param settingOut the day of setting out
	 * @return the figures
	 */
	public static GivenFigures ofLight(StartingLight light, LocalDate settingOut) {
		return new GivenFigures(null, null, null, null, null, settingOut, light, false, null, null);
	}

	/**
	 * Figures of a tested bed.
	 * @param soil the test
	 * @param bed the bed
	 * @return the figures
	 */
	public static GivenFigures ofTest(SoilTest soil, TreatedBed bed) {
		return new GivenFigures(bed.squareMetres(), null, null, null, null, null, null, false, soil, bed);
	}

}
