package org.leafward.register.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NumberWords;
import org.leafward.pages.Choice;
import org.leafward.register.SoilTexture;
import org.leafward.register.core.BucketTest;
import org.leafward.register.core.FeelTest;
import org.leafward.register.core.FeelTest.Found;
import org.leafward.register.core.FeelTest.Ribbon;
import org.leafward.register.core.FeelTest.Rubbed;
import org.springframework.ui.Model;

/**
 * The answers of the tests by hand, as somebody gives them; nothing is checked yet.
 *
 * @param ball whether the soil stays in a ball: yes or no; empty when nobody tried
 * @param ribbon how long a ribbon gets
 * @param rubbed how it feels very wet
 * @param bucket what the bucket holds, l or with its unit; empty when nobody measured
 * @param seconds how long the hose takes to fill it
 */
record HandTests(@Nullable String ball, @Nullable String ribbon, @Nullable String rubbed, @Nullable String bucket,
		@Nullable String seconds) {

	/** Stands for the soil in a list when the test by hand shall tell it. */
	static final String BY_FEEL = "feel";

	/** Exact: a US gallon, l. */
	private static final double LITRES_PER_GALLON = 3.785411784;

	/** Yes or no. */
	private enum Answer {

		YES, NO

	}

	/**
	 * The soil.
	 * @return empty when the test wasn't begun
	 * @throws BadInput when an answer is missing or unknown
	 */
	Optional<Found> soil() {
		if (blank(this.ball)) {
			return Optional.empty();
		}
		if (Given.word("ball", this.ball, Answer.class) == Answer.NO) {
			return Optional.of(FeelTest.noBall());
		}
		Findings all = new Findings();
		Supplier<Ribbon> length = all
			.read(() -> told("ribbon", this.ribbon, Ribbon.class, "how long the ribbon gets is not told yet",
					"push the ball out between thumb and finger and measure it"));
		boolean none = "none".equals(this.ribbon);
		Supplier<Rubbed> feel = all.read(() -> none ? Rubbed.NEITHER : told("rubbed", this.rubbed, Rubbed.class,
				"how the wet soil feels is not told yet", "rub a very wet pinch in your palm"));
		return Optional.of(all.give(() -> FeelTest.ball(length.get(), feel.get())));
	}

	private static <E extends Enum<E>> E told(String field, @Nullable String given, Class<E> type, String missing,
			String mend) {
		if (blank(given)) {
			throw new BadInput(missing, field, mend);
		}
		return Given.word(field, given, type);
	}

	/**
	 * The soil where the test shall tell it: somebody says so, or names none.
	 * @param chosen what was chosen of the list
	 * @return empty when something else was chosen, or nobody began the test
	 * @throws BadInput when the test shall tell it and can't
	 */
	Optional<SoilTexture> soil(String chosen) {
		if (!chosen.isEmpty() && !chosen.equals(BY_FEEL)) {
			return Optional.empty();
		}
		Optional<Found> found = soil();
		if (found.isEmpty() && chosen.equals(BY_FEEL)) {
			throw new BadInput("the soil was not felt yet", "ball", "squeeze a moist handful, or choose a soil above");
		}
		return found.map(Found::kept);
	}

	/**
	 * The flow as a form writes it: as somebody knows it, else as the bucket tells it.
	 * @param known what was filled in
	 * @return empty when neither is told
	 * @throws BadInput when the bucket shall tell it and can't
	 */
	String flow(String known) {
		return !known.isBlank() ? known : flow().map(SizeRequest::written).orElse("");
	}

	/**
	 * The flow of the hose.
	 * @return l/min; empty when nobody measured
	 * @throws BadInput when one of the two is missing or can't be used
	 */
	Optional<Double> flow() {
		if (blank(this.bucket) && blank(this.seconds)) {
			return Optional.empty();
		}
		Findings all = new Findings();
		Supplier<Double> litres = all
			.read(() -> Dimension.VOLUME.read("bucket", (this.bucket != null) ? this.bucket : ""));
		Supplier<Double> time = all.read(() -> Given.number("seconds", this.seconds, "seconds"));
		return Optional.of(all.give(() -> new BucketTest(litres.get(), time.get())).litresPerMinute());
	}

	/** What the soil is, in a sentence. */
	static String words(Found found) {
		String name = found.words();
		String kept = found.kept().words();
		return name.equals(kept) ? "By feel it is %s.".formatted(name)
				: "By feel it is %s, which counts as %s here.".formatted(name, kept);
	}

	/** What the hose gives, in a sentence. */
	static String words(double litresPerMinute) {
		return "Your hose gives %s l/min (%s gal/min).".formatted(NumberWords.fixed(litresPerMinute, 1),
				NumberWords.fixed(litresPerMinute / LITRES_PER_GALLON, 1));
	}

	/** All soils, and that the test shall tell it. */
	static List<Choice> soils() {
		List<Choice> soils = new ArrayList<>(List.of(new Choice(BY_FEEL, "What the test below finds")));
		soils.addAll(RegisterPages.choices(SoilTexture.values(), SoilTexture::words));
		return soils;
	}

	/** What there is to choose from. */
	static void choices(Model model) {
		model.addAttribute("balls",
				List.of(new Choice("", "I haven’t tried"), new Choice("yes", "Yes, it stays in a ball"),
						new Choice("no", "No, it falls apart, neither too dry nor too wet")));
		model.addAttribute("ribbons", withNone(Ribbon.values(), Ribbon::words));
		model.addAttribute("rubs", withNone(Rubbed.values(), Rubbed::words));
	}

	private static <E extends Enum<E>> List<Choice> withNone(E[] values, Function<E, String> words) {
		List<Choice> choices = new ArrayList<>(List.of(new Choice("", "Not told yet")));
		Arrays.stream(values).forEach((one) -> choices.add(new Choice(SiteAnswer.word(one), words.apply(one))));
		return choices;
	}

	/** The sentences of what can be told; what can't is passed over. */
	void told(Model model) {
		model.addAttribute("soilFound", ifTold(this::soil).map(HandTests::words).orElse(null));
		model.addAttribute("flowFound", ifTold(this::flow).map((litres) -> words(litres.doubleValue())).orElse(null));
	}

	/** What a test tells; nothing where it can't. */
	static <T> Optional<T> ifTold(Supplier<Optional<T>> test) {
		try {
			return test.get();
		}
		catch (BadInput ex) {
			return Optional.empty();
		}
	}

	private static boolean blank(@Nullable String text) {
		return text == null || text.isBlank();
	}

}
