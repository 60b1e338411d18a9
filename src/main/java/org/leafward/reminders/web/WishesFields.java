package org.leafward.reminders.web;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;

/**
 * Wishes as the fields of a form, each a text under its name. What is left out is as
 * usual.
 */
final class WishesFields {

	/** The longest pause, so that nobody is silent for good by a slip of the year. */
	static final int LONGEST_PAUSE_DAYS = 366;

	/** Topics of which one can be told some days ahead. */
	static final Set<Topic> AHEAD = EnumSet.of(Topic.TO_DO, Topic.HOLD_OFF, Topic.RAMP, Topic.LOOK_FOR);

	private final Map<String, String> fields;

	private final LocalDate today;

	private WishesFields(Map<String, String> fields, LocalDate today) {
		this.fields = fields;
		this.today = today;
	}

	/** The field in which stands how one is told of a topic. */
	static String manner(String channel, Topic topic) {
		return channel + "-" + topic.code();
	}

	/** The field in which stands how many days ahead one is told of a topic. */
	static String ahead(String channel, Topic topic) {
		return manner(channel, topic) + "-ahead";
	}

	/**
	 * The fields of wishes.
	 * @param wishes the wishes
	 * @param channels codes of the channels to choose for
	 * @param today the day where the person is; a pause that is over is left out
	 */
	static Map<String, String> of(Wishes wishes, Collection<String> channels, LocalDate today) {
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("morning", wishes.morning().toString());
		fields.put("pausedUntil", wishes.pausedOn(today) ? String.valueOf(wishes.pausedUntil()) : "");
		fields.put("outlookDay", word(wishes.outlookDay()));
		boolean quiet = !wishes.quiet().from().equals(wishes.quiet().to());
		fields.put("quietFrom", quiet ? wishes.quiet().from().toString() : "");
		fields.put("quietTo", quiet ? wishes.quiet().to().toString() : "");
		fields.put("urgentAnyway", String.valueOf(wishes.urgentAnyway()));
		fields.put("language", wishes.speech().language().code());
		fields.put("units", wishes.speech().units().code());
		for (String channel : channels) {
			for (Topic topic : Topic.values()) {
				Wish wish = wishes.of(channel, topic);
				fields.put(manner(channel, topic), wish.manner().code());
				fields.put(ahead(channel, topic), String.valueOf(wish.leadDays()));
			}
		}
		return fields;
	}

	/**
	 * Reads the fields.
	 * @param fields texts by name; names that mean nothing here are not looked at
	 * @param channels codes of the channels that were chosen for
	 * @param today the day where the person is
	 * @return wishes without series that were left
	 * @throws BadInput with every field that can't be used
	 */
	static Wishes read(Map<String, String> fields, Collection<String> channels, LocalDate today) {
		return new WishesFields(fields, today).wishes(channels);
	}

	private Wishes wishes(Collection<String> channels) {
		Findings all = new Findings();
		Supplier<Language> language = all.read(() -> Language.of("language", or("language", "en")));
		Supplier<Units> units = all.read(() -> Units.of("units", or("units", "both")));
		Supplier<LocalTime> morning = all.read(() -> time("morning", or("morning", Wishes.USUAL.morning().toString())));
		Supplier<DayOfWeek> outlook = all
			.read(() -> Given.word("outlookDay", or("outlookDay", word(Wishes.USUAL.outlookDay())), DayOfWeek.class));
		Supplier<QuietHours> quiet = quiet(all);
		Supplier<Boolean> urgent = all.read(() -> yes("urgentAnyway", or("urgentAnyway", "true")));
		Supplier<Optional<LocalDate>> pause = all.read(this::pause);
		Map<String, Supplier<Map<Topic, Wish>>> chosen = new LinkedHashMap<>();
		channels.forEach((channel) -> chosen.put(channel, chosen(channel, all)));
		return all.give(() -> new Wishes(new Speech(language.get(), units.get()), morning.get(), outlook.get(),
				quiet.get(), urgent.get(), pause.get().orElse(null), own(chosen), Map.of()));
	}

	private Optional<LocalDate> pause() {
		String text = this.fields.get("pausedUntil");
		if (text == null || text.isBlank()) {
			return Optional.empty();
		}
		LocalDate until = Given.date("pausedUntil", text);
		if (!until.isAfter(this.today)) {
			throw new BadInput("%s is not after today, %s".formatted(until, this.today), "pausedUntil",
					"give the first day on which messages go out again, or leave it empty");
		}
		if (until.isAfter(this.today.plusDays(LONGEST_PAUSE_DAYS))) {
			throw new BadInput("%s is more than a year ahead".formatted(until), "pausedUntil",
					"give a day within a year");
		}
		return Optional.of(until);
	}

	/** Both empty mean that there are none; both left out, that they are as usual. */
	private Supplier<QuietHours> quiet(Findings all) {
		String from = this.fields.get("quietFrom");
		String to = this.fields.get("quietTo");
		if (from == null && to == null) {
			return () -> QuietHours.USUAL;
		}
		if ((from == null || from.isBlank()) && (to == null || to.isBlank())) {
			return () -> new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
		}
		Supplier<LocalTime> begin = all.read(() -> time("quietFrom", (from != null) ? from : ""));
		Supplier<LocalTime> end = all.read(() -> time("quietTo", (to != null) ? to : ""));
		return () -> new QuietHours(begin.get(), end.get());
	}

	/** What differs from what is usual. */
	private Supplier<Map<Topic, Wish>> chosen(String channel, Findings all) {
		Map<Topic, Supplier<Wish>> read = new EnumMap<>(Topic.class);
		for (Topic topic : Topic.values()) {
			Supplier<Manner> manner = all.read(() -> mannerOf(channel, topic));
			Supplier<Integer> days = all.read(() -> daysOf(channel, topic));
			read.put(topic, () -> new Wish(manner.get(), days.get()));
		}
		all.check(() -> neverTold(channel));
		return () -> read.entrySet()
			.stream()
			.map((one) -> Map.entry(one.getKey(), one.getValue().get()))
			.filter((one) -> !one.getValue().equals(Wishes.usual(channel, one.getKey())))
			.collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
	}

	private static Map<String, Map<Topic, Wish>> own(Map<String, Supplier<Map<Topic, Wish>>> read) {
		Map<String, Map<Topic, Wish>> own = new LinkedHashMap<>();
		read.forEach((channel, chosen) -> own.put(channel, chosen.get()));
		own.values().removeIf(Map::isEmpty);
		return own;
	}

	private Manner mannerOf(String channel, Topic topic) {
		String field = manner(channel, topic);
		String code = or(field, Wishes.usual(channel, topic).manner().code()).strip().toLowerCase(Locale.ROOT);
		return topic.manners()
			.stream()
			.filter((one) -> one.code().equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no way to be told of this".formatted(code), field,
					"use " + topic.manners().stream().map(Manner::code).collect(Collectors.joining(", "))));
	}

	private int daysOf(String channel, Topic topic) {
		String field = ahead(channel, topic);
		String text = this.fields.get(field);
		if (text == null || text.isBlank() || !AHEAD.contains(topic)) {
			return 0;
		}
		int days = Given.whole(field, text);
		if (days < 0 || days > Wish.MOST_LEAD_DAYS) {
			throw new BadInput("%d days ahead is not 0 to %d".formatted(days, Wish.MOST_LEAD_DAYS), field,
					"give 0 to be told on the day itself");
		}
		return days;
	}

	/** What stands in the outlook only is told by nobody when there is no outlook. */
	private void neverTold(String channel) {
		Findings lost = new Findings();
		if (is(channel, Topic.OUTLOOK, Manner.OFF)) {
			EnumSet<Topic> others = EnumSet.complementOf(EnumSet.of(Topic.OUTLOOK));
			others.stream().filter((topic) -> is(channel, topic, Manner.WEEKLY)).forEach((topic) -> lost.check(() -> {
				throw new BadInput(
						"“%s” would stand in the weekly outlook only, and there is none".formatted(topic.words()),
						manner(channel, topic), "choose something else here, or the weekly outlook");
			}));
		}
		lost.end();
	}

	private boolean is(String channel, Topic topic, Manner manner) {
		return or(manner(channel, topic), Wishes.usual(channel, topic).manner().code()).strip()
			.equalsIgnoreCase(manner.code());
	}

	private String or(String field, String usual) {
		return this.fields.getOrDefault(field, usual);
	}

	private static LocalTime time(String field, String text) {
		try {
			return LocalTime.parse(Given.text(field, text));
		}
		catch (DateTimeException ex) {
			throw new BadInput("'%s' is no time of day".formatted(text), field,
					"write hours and minutes, such as 07:00");
		}
	}

	private static boolean yes(String field, String text) {
		return switch (text.strip().toLowerCase(Locale.ROOT)) {
			case "true" -> true;
			case "false" -> false;
			default -> throw new BadInput("'%s' is neither true nor false".formatted(text), field, "say true or false");
		};
	}

	static String word(DayOfWeek day) {
		return day.name().toLowerCase(Locale.ROOT);
	}

}
