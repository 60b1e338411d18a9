package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.plan.WeatherAnswers.Answer;
import org.leafward.climate.WaterBed;
import org.leafward.climate.WaterView;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;
import org.leafward.register.SoilTexture;

/**
 * Whether the root zone of a site is dry or moist, from the balance of its water. Rain
 * that nobody measured counts as none there; so soil that is moist all the same is moist
 * for certain, and soil that isn't dry isn't, while the rest stays open.
 */
public final class SoilMoisture {

	/** Days of the balance that are looked at, up to yesterday. */
	public static final int DAYS = 14;

	/** With fewer measured days of these nothing is said; our choice. */
	private static final int FEWEST_MEASURED = 7;

	private final @Nullable WaterView water;

	/**
	 * Looks at a balance.
	 * @param water the last {@value #DAYS} days; empty when no station can tell
	 */
	public SoilMoisture(Optional<WaterView> water) {
		this.water = water.filter((view) -> measured(view.days()) >= FEWEST_MEASURED).orElse(null);
	}

	/**
	 * The bed that stands for a site.
	 * @param soil its soil
	 * @param today the day; what was watered today counts as if it were yesterday, as the
	 * balance ends there
	 * @param waterings mm by day
	 * @return shrubs in that soil
	 */
	public static WaterBed bed(SoilTexture soil, LocalDate today, Map<LocalDate, Double> waterings) {
		return WaterBed.shrubs(soil.words(), upToYesterday(today, waterings));
	}

	/**
	 * Waterings for a balance that ends yesterday.
	 * @param today the day; what was watered today counts as if it were yesterday
	 * @param waterings mm by day
	 * @return mm by day
	 */
	public static Map<LocalDate, Double> upToYesterday(LocalDate today, Map<LocalDate, Double> waterings) {
		Map<LocalDate, Double> given = new HashMap<>(waterings);
		Double now = given.remove(today);
		if (now != null) {
			given.merge(today.minusDays(1), now, Double::sum);
		}
		return given;
	}

	/**
	 * Whether plants feel drought: the readily available water is gone.
	 * @return the answer
	 */
	public Answer dry() {
		return (this.water == null) ? unknown()
				: answer(this.water, last(this.water).stressed() ? certain(this.water) : Boolean.FALSE);
	}

	/**
	 * Whether watering is needless: less than half of the readily available water is
	 * gone.
	 * @return the answer
	 */
	public Answer moist() {
		return (this.water == null) ? unknown()
				: answer(this.water, last(this.water).wetEnough() ? Boolean.TRUE : not(certain(this.water)));
	}

	private static @Nullable Boolean not(@Nullable Boolean holds) {
		return (holds != null) ? !holds : null;
	}

	/** Null when rain may have gone unseen. */
	private static @Nullable Boolean certain(WaterView water) {
		return (measured(water.days()) == water.days().size()) ? Boolean.TRUE : null;
	}

	private static int measured(List<WaterView.Day> days) {
		return (int) days.stream().filter(WaterView.Day::complete).count();
	}

	private static WaterView.Day last(WaterView water) {
		return water.days().get(water.days().size() - 1);
	}

	private static Answer unknown() {
		return new Answer(null,
				Explanation.of("Water in the root zone", "not known")
					.withDetail("No station near enough measured rain and temperature on %d of the last %d days."
						.formatted(FEWEST_MEASURED, DAYS)));
	}

	private static Answer answer(WaterView water, @Nullable Boolean holds) {
		WaterView.Day last = last(water);
		String state = last.wetEnough() ? "moist enough" : last.stressed() ? "dry" : "drying";
		String value = "%s; %s mm are missing, plants feel it from %s mm on".formatted(state,
				NumberWords.fixed(last.depletion(), 0), NumberWords.fixed(last.readily(), 0));
		Explanation reason = Explanation.of("Water in the root zone", value)
			.withDetail("In the evening of " + DayWords.of(last.date())
					+ (Boolean.TRUE.equals(certain(water)) ? "."
							: ". On some days nobody measured; they count as dry."))
			.withSteps(List.of(water.explanation()));
		return new Answer(holds, reason);
	}

}
