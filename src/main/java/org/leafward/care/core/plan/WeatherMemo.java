package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Condition;

/** The weather of a site, each question asked once. */
final class WeatherMemo {

	/** How far a forecast is trusted, days after today. */
	static final int FORECAST_DAYS = 3;

	private final WeatherAnswers weather;

	private final LocalDate today;

	private final Map<Asked, WeatherAnswers.Answer> answers = new HashMap<>();

	WeatherMemo(WeatherAnswers weather, LocalDate today) {
		this.weather = weather;
		this.today = today;
	}

	/** A question as of today, without a day, or about a single day. */
	private record Asked(Condition condition, @Nullable LocalDate day) {
	}

	/**
	 * Asks.
	 * @param condition the state asked about
	 * @param day a single day; null as of today
	 * @return the answer
	 */
	WeatherAnswers.Answer ask(Condition condition, @Nullable LocalDate day) {
		Asked asked = new Asked(condition, day);
		WeatherAnswers.Answer known = this.answers.get(asked);
		if (known == null) {
			known = (day == null) ? this.weather.ask(condition, this.today) : this.weather.on(condition, day);
			this.answers.put(asked, known);
		}
		return known;
	}

	/** The last day of which a forecast is trusted. */
	LocalDate horizon() {
		return this.today.plusDays(FORECAST_DAYS);
	}

}
