package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.salt.Leaching;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.measure.Explanation;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The same calculators by API. */
@RestController
@Tag(name = "Calculators", description = "Amounts from figures that are given; nothing is stored")
class SaltCalculatorsApi {

	/** Water for leaching; depth in mm, litres null without an area. */
	record LeachingView(String words, String outcome, double millimetres, @Nullable Double litres, int passes,
			double shareLeft) {

		static LeachingView of(Leaching leaching) {
			Double litres = leaching.litres();
			return new LeachingView(leaching.amount().words(), Calculators.code(leaching.outcome()),
					tenths(leaching.millimetres()), (litres != null) ? tenths(litres) : null, leaching.passes(),
					Math.round(leaching.shareLeft() * 1000) / 1000.0);
		}

	}

	/** Leaching with what helps beside it. */
	record SaltView(LeachingView leaching, List<Explanation> afterThaw, List<Explanation> beforeWinter,
			Explanation explanation) {
	}

	/**
	 * What a test asks for; conductivity in dS/m, exchangeable sodium in %, gypsum in kg.
	 */
	record SoilTestView(String words, String soilClass, double saturatedPaste, double exchangeableSodium, String remedy,
			double gypsumKilograms, List<Double> applications, @Nullable LeachingView leaching, String retest,
			Explanation explanation) {
	}

	@Operation(summary = "Water that carries salt out of a bed")
	@GetMapping("/api/calculators/salt")
	SaltView salt(@ParameterObject SaltRequest asked) {
		SaltAnswer answer = asked.answer();
		return new SaltView(LeachingView.of(answer.leaching()), answer.afterThaw(), answer.beforeWinter(),
				answer.explanation());
	}

	@Operation(summary = "The class of a soil by salt and sodium, and gypsum where it helps")
	@GetMapping("/api/calculators/soil-test")
	SoilTestView soilTest(@ParameterObject SoilTestRequest asked) {
		SoilTestRequest.Read read = asked.read();
		SoilTest test = read.test();
		SoilTreatment treatment = read.treatment();
		Leaching leaching = treatment.leaching();
		return new SoilTestView(treatment.amount().words(), Calculators.code(treatment.soil()),
				hundredths(test.conductivity().saturated()), hundredths(test.exchangeable()),
				Calculators.code(treatment.remedy()), hundredths(treatment.kilograms()),
				treatment.applications().stream().map(SaltCalculatorsApi::hundredths).toList(),
				(leaching != null) ? LeachingView.of(leaching) : null, treatment.retest(),
				treatment.amount().explanation());
	}

	private static double tenths(double value) {
		return Math.round(value * 10) / 10.0;
	}

	private static double hundredths(double value) {
		return Math.round(value * 100) / 100.0;
	}

}
