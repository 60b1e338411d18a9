package org.leafward.amounts.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Component;

/**
 * The calculators whose answers can be kept, asked by the same forms as on their pages.
 */
@Component
class AskedAgain implements Calculations {

	private static final List<Kind<?>> KINDS = List.of(
			new Kind<>("water", "Water", WaterRequest.class, (form) -> form.answer().words(), WaterRequest::figures),
			new Kind<>("new-tree", "Watering a new tree", NewTreeRequest.class, (form) -> form.plan().amount().words(),
					NewTreeRequest::figures),
			new Kind<>("light", "Hardening off", LightRequest.class, (form) -> form.answer().lead(),
					LightRequest::figures),
			new Kind<>("salt", "Salt in a bed", SaltRequest.class, (form) -> form.answer().leaching().amount().words(),
					SaltRequest::figures),
			new Kind<>("soil-test", "Soil test", SoilTestRequest.class,
					(form) -> form.read().treatment().amount().words(), SoilTestRequest::figures));

	private static final Map<String, Kind<?>> BY_NAME = KINDS.stream()
		.collect(Collectors.toMap(Kind::name, (kind) -> kind, (one, other) -> one, LinkedHashMap::new));

	/**
	 * A calculator.
	 *
	 * @param name in addresses
	 * @param title what it is about
	 * @param form its fields
	 * @param words its answer
	 * @param figures what was told; asked once there is an answer
	 */
	private record Kind<R extends Record>(String name, String title, Class<R> form, Function<R, String> words,
			Function<R, GivenFigures> figures) {

		Calculation ask(Map<String, String> given) {
			Map<String, String> inputs = Inputs.pick(this.form, given);
			R asked = Inputs.form(this.form, inputs);
			return new Calculation(this.name, inputs, this.words.apply(asked), this.figures.apply(asked));
		}

	}

	@Override
	public Map<String, String> titles() {
		Map<String, String> titles = new LinkedHashMap<>();
		KINDS.forEach((kind) -> titles.put(kind.name(), kind.title()));
		return Collections.unmodifiableMap(titles);
	}

	@Override
	public Map<String, String> inputs(String calculator, Map<String, String> given) {
		return Inputs.pick(kind(calculator).form(), given);
	}

	@Override
	public Calculation of(String calculator, Map<String, String> given) {
		return kind(calculator).ask(given);
	}

	private static Kind<?> kind(String calculator) {
		Kind<?> kind = BY_NAME.get(calculator);
		if (kind == null) {
			throw new NotThere("There is no calculator '%s' whose answers are kept".formatted(calculator));
		}
		return kind;
	}

}
