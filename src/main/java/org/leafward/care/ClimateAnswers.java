package org.leafward.care;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.leafward.care.core.amount.Roots;
import org.leafward.care.core.plan.SoilMoisture;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.care.core.rule.Condition;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.WaterBalance;
import org.leafward.climate.WaterBed;
import org.leafward.climate.WaterView;
import org.leafward.climate.WeatherOutlook;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherStates;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;

/**
 * The weather of sites, from the stations and forecasts around them and from the water in
 * their soil. Nothing is looked up for a site before a rule asks, and nothing twice.
 */
@Component
class ClimateAnswers {

	private final WeatherStates states;

	private final WaterBalance balance;

	ClimateAnswers(WeatherStates states, WaterBalance balance) {
		this.states = states;
		this.balance = balance;
	}

	/** Answers that are good for as long as one plan takes. */
	WeatherAnswers at(SiteInputs inputs, WeatherOutlook outlook) {
		return new Answers(outlook, SingletonSupplier.of(() -> new SoilMoisture(water(inputs))));
	}

	/** The weather as it is seen from a site today. */
	WeatherOutlook outlook(SiteInputs inputs) {
		return this.states.outlook(inputs.site().place(), inputs.today(), inputs.surroundings());
	}

	/** The water of a site's own ground in the last two weeks. */
	private Optional<WaterView> water(SiteInputs inputs) {
		return water(inputs, SoilMoisture.bed(inputs.site().soil(), inputs.today(), inputs.waterings().whole()));
	}

	/** The same in the bed of plants of some kind, with what it got. */
	Optional<WaterView> water(SiteInputs inputs, Roots roots, Map<LocalDate, Double> given) {
		return water(inputs, new WaterBed(inputs.site().soil().words(), roots.depthMetres(), roots.plantFactor(),
				WaterBed.USUAL_DEPLETION, SoilMoisture.upToYesterday(inputs.today(), given)));
	}

	private Optional<WaterView> water(SiteInputs inputs, WaterBed bed) {
		Site site = inputs.site();
		LocalDate today = inputs.today();
		return this.balance.of(site.point(), inputs.surroundings(), bed, today.minusDays(SoilMoisture.DAYS),
				today.minusDays(1));
	}

	private record Answers(WeatherOutlook outlook, Supplier<SoilMoisture> soil) implements WeatherAnswers {

		@Override
		public Answer ask(Condition condition, LocalDate day) {
			Optional<StateQuestion> question = condition.question();
			return question.isPresent() ? answer(this.outlook.answer(question.get())) : soil(condition, day);
		}

		@Override
		public Answer on(Condition condition, LocalDate day) {
			Optional<StateQuestion> question = condition.question();
			return question.isPresent() ? answer(this.outlook.on(day, question.get())) : soil(condition, day);
		}

		private static Answer answer(WeatherState state) {
			return new Answer(state.holds(), state.explanation());
		}

		/** Of a day to come, as it is today. */
		private Answer soil(Condition condition, LocalDate day) {
			return switch (condition.state()) {
				case "root-zone-dry" -> this.soil.get().dry();
				case "root-zone-moist" -> this.soil.get().moist();
				default -> UNKNOWN.ask(condition, day);
			};
		}

	}

}
