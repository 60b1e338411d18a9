package org.leafward.feeds.web;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.FeedPart;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;

/**
 * What a calendar shall hold, as told in a form or as JSON. What is left out is as usual.
 *
 * @param language code of a language, for example {@code es}
 * @param units {@code both}, {@code metric} or {@code us}
 * @param parts codes of what it holds
 * @param alarm a time of day such as 08:00; empty for none
 * @param behind days shown before today, 0 to 180
 * @param ahead days shown after today, 7 to 400
 */
record OptionsForm(@Nullable String language, @Nullable String units, @Nullable List<String> parts,
		@Nullable String alarm, @Nullable String behind, @Nullable String ahead) {

	static OptionsForm of(FeedOptions options) {
		return new OptionsForm(options.speech().language().code(), options.speech().units().code(),
				options.parts().stream().sorted().map(FeedPart::code).toList(),
				(options.alarm() != null) ? options.alarm().toString() : "", String.valueOf(options.behind()),
				String.valueOf(options.ahead()));
	}

	static OptionsForm usual() {
		return of(FeedOptions.USUAL);
	}

	public boolean has(String part) {
		return this.parts != null && this.parts.contains(part);
	}

	/**
	 * The options.
	 * @throws BadInput with every field that can't be used
	 */
	FeedOptions options() {
		Findings all = new Findings();
		Supplier<Language> spoken = all.read(() -> Language.of("language", or(this.language, "en")));
		Supplier<Units> measured = all.read(() -> Units.of("units", or(this.units, "both")));
		Supplier<Set<FeedPart>> held = all.read(this::held);
		Supplier<LocalTime> rings = all.read(() -> time(or(this.alarm, "00:00")));
		Supplier<Integer> back = all
			.read(() -> Given.whole("behind", or(this.behind, String.valueOf(FeedOptions.MOST_BEHIND))));
		Supplier<Integer> on = all
			.read(() -> Given.whole("ahead", or(this.ahead, String.valueOf(FeedOptions.MOST_AHEAD))));
		return all.give(() -> new FeedOptions(new Speech(spoken.get(), measured.get()), held.get(),
				(this.alarm == null || this.alarm.isBlank()) ? null : rings.get(), back.get(), on.get()));
	}

	private Set<FeedPart> held() {
		if (this.parts == null) {
			return FeedOptions.USUAL.parts();
		}
		return this.parts.stream().filter((one) -> !one.isBlank()).map(OptionsForm::part).collect(Collectors.toSet());
	}

	private static FeedPart part(String code) {
		return Arrays.stream(FeedPart.values())
			.filter((one) -> one.code().equals(code.strip().toLowerCase(Locale.ROOT)))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no part of a calendar".formatted(code), "parts",
					"use " + Stream.of(FeedPart.values()).map(FeedPart::code).collect(Collectors.joining(", "))));
	}

	private static LocalTime time(String text) {
		try {
			return LocalTime.parse(text.strip());
		}
		catch (DateTimeException ex) {
			throw new BadInput("'%s' is no time of day".formatted(text), "alarm",
					"write hours and minutes, such as 08:00, or leave it empty");
		}
	}

	private static String or(@Nullable String text, String otherwise) {
		return (text == null || text.isBlank()) ? otherwise : text;
	}

	/** The languages to choose from. */
	static List<Choice> languages() {
		return Arrays.stream(Language.values()).map((one) -> new Choice(one.code(), one.words())).toList();
	}

	/** The units to choose from. */
	static List<Choice> systems() {
		return Arrays.stream(Units.values()).map((one) -> new Choice(one.code(), one.words())).toList();
	}

	/** What a calendar may hold. */
	static List<Choice> offers() {
		return Arrays.stream(FeedPart.values()).map((one) -> new Choice(one.code(), one.words())).toList();
	}

}
