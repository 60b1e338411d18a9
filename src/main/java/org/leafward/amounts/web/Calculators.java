package org.leafward.amounts.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;
import org.leafward.pages.Choice;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;

/** What the calculators share. A new one is listed here. */
final class Calculators {

	/** Every calculator: its address and what it answers. */
	static final List<Choice> ALL = List.of(new Choice("/calculators/water", "Water: how much, and for how long"),
			new Choice("/calculators/new-tree", "New tree: when and how much to water until it has grown in"),
			new Choice("/calculators/salt", "Salt: how much water carries it out of a bed"),
			new Choice("/calculators/soil-test", "Soil test: is it salt or sodium, and does gypsum help"),
			new Choice("/calculators/light", "Hardening off: how much light and how long, day by day"),
			new Choice("/calculators/cover", "Cover tonight: does it need one, and which"));

	/** How conductivity was measured where nobody said. */
	static final String EXTRACT = "saturated-paste";

	/** Texture of a soil where nobody said. */
	static final String SOIL = "loam";

	/** Drainage where nobody said. */
	static final String DRAINAGE = "untested";

	private Calculators() {
	}

	/** The constants of an enum for a form. */
	static <E extends Enum<E>> List<Choice> choices(E[] values, Function<E, String> words) {
		return Arrays.stream(values).map((one) -> new Choice(code(one), words.apply(one))).toList();
	}

	/** A constant as it is written in addresses and answers. */
	static String code(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** What was given, or what is usual. */
	static String or(@Nullable String given, String usual) {
		return (given == null || given.isBlank()) ? usual : given;
	}

	/** A quantity that may stay empty. */
	static Optional<Double> quantity(Dimension dimension, String field, @Nullable String given) {
		return (given == null || given.isBlank()) ? Optional.empty() : Optional.of(dimension.read(field, given));
	}

	/** Fills in the result, or what can't be used. */
	static void answer(boolean asked, Model model, HttpServletResponse response, Runnable question) {
		model.addAttribute("section", "calculators");
		model.addAttribute("errors", Map.of());
		if (!asked) {
			return;
		}
		try {
			question.run();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("errors", ex.byField());
		}
	}

}
