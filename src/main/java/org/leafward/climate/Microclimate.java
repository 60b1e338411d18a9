package org.leafward.climate;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * What makes the clear, cold nights of a place differ from those of open, level ground at
 * its height. It concerns daily minima only: by day the air is mixed. Sums of heat take
 * half of it, as they add up the mean of minimum and maximum; soil follows the height
 * alone.
 * <p>
 * The amounts are common practice of growers, given from memory and right in their order
 * of magnitude only; features are added up. A thermometer's measured offset replaces them
 * all.
 *
 * @param lie how the place lies
 * @param nearWall whether plants stand before a wall that faces the midday or afternoon
 * sun
 * @param inTown whether it is built up all around
 * @param measuredOffsetCelsius mean difference of the place's own minimum thermometer to
 * the estimate from the stations and the height, -10 to 10 °C, negative when colder; null
 * when nobody measured
 */
public record Microclimate(Lie lie, boolean nearWall, boolean inTown, @Nullable Double measuredOffsetCelsius) {

	/** Open, level ground. */
	public static final Microclimate NONE = new Microclimate(Lie.FLAT, false, false, null);

	/** Largest measured offset either way, °C. */
	public static final double MOST_CELSIUS = 10;

	/** A wall that faces the sun gives warmth back at night, °C. */
	public static final double WALL_CELSIUS = 1;

	/** Buildings and pavement hold warmth, °C. */
	public static final double TOWN_CELSIUS = 1;

	private static final String FROM_MEMORY = "Common practice, from memory, order of magnitude only; "
			+ "a minimum thermometer of your own beats it";

	public Microclimate {
		if (measuredOffsetCelsius != null && !(Math.abs(measuredOffsetCelsius) <= MOST_CELSIUS)) {
			throw new BadInput("measured offset %s is outside -10 to 10 °C".formatted(measuredOffsetCelsius),
					"measuredOffsetCelsius",
					"give the mean difference of your thermometer to the estimate, negative when it is colder");
		}
	}

	/** How a place lies to the cold air that flows downhill on clear nights. */
	public enum Lie {

		/** Level, open ground. */
		FLAT("level, open ground", 0),

		/** Cold air gathers here. */
		HOLLOW("a hollow where cold air gathers", -2),

		/** Cold air flows off; the warm belt of a hillside. */
		SLOPE("the middle of a slope, where cold air flows off", 1),

		/** Above the warm belt and open to the wind. */
		HILLTOP("the top of a hill", 0);

		private final String words;

		private final double celsius;

		Lie(String words, double celsius) {
			this.words = words;
			this.celsius = celsius;
		}

		public String words() {
			return this.words;
		}

		/**
		 * How much warmer the minimum is than on level ground at the same height.
		 * @return °C, negative when colder
		 */
		public double celsius() {
			return this.celsius;
		}

	}

	/**
	 * One reason for warmer or colder nights.
	 *
	 * @param name the reason in a few words
	 * @param celsius how much warmer, negative when colder
	 * @param measured whether a thermometer says so
	 * @param source how far to trust the figure
	 */
	public record Effect(String name, double celsius, boolean measured, String source) {
	}

	/**
	 * The same lie with another thermometer.
	 * @param celsius its measured offset, -10 to 10 °C; null for none
	 * @return the microclimate
	 * @throws BadInput when the offset is out of its bounds
	 */
	public Microclimate measuring(@Nullable Double celsius) {
		return new Microclimate(this.lie, this.nearWall, this.inTown, celsius);
	}

	/**
	 * The reasons that count: the thermometer's alone where there is one.
	 * @return none for level, open ground
	 */
	public List<Effect> effects() {
		if (this.measuredOffsetCelsius != null) {
			return List.of(new Effect("Your thermometer", this.measuredOffsetCelsius, true,
					"Measured at the place; it replaces estimates for the lie, a wall or a town"));
		}
		List<Effect> effects = new ArrayList<>();
		switch (this.lie) {
			case HOLLOW -> effects.add(estimate("Cold hollow", this.lie.celsius()));
			case SLOPE -> effects.add(estimate("Middle of a slope", this.lie.celsius()));
			case FLAT, HILLTOP -> {
				// No difference worth a figure.
			}
		}
		if (this.nearWall) {
			effects.add(estimate("Wall that faces the sun", WALL_CELSIUS));
		}
		if (this.inTown) {
			effects.add(estimate("Built-up town", TOWN_CELSIUS));
		}
		return List.copyOf(effects);
	}

	private static Effect estimate(String name, double celsius) {
		return new Effect(name, celsius, false, FROM_MEMORY);
	}

	/**
	 * How much warmer the daily minimum is than on open, level ground at the same height.
	 * @return °C, negative when colder
	 */
	public double minimumOffset() {
		return effects().stream().mapToDouble(Effect::celsius).sum();
	}

}
