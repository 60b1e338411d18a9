package org.leafward.reminders.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Person;
import org.leafward.language.Language;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Manner;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where people choose how to be told, and see what comes next. */
@Controller
class WishesPage {

	/** Enough for two weeks of a large garden; the rest is in the calendar. */
	private static final int NEXT = 40;

	private final Me me;

	private final HowToTell howToTell;

	private final Coming coming;

	WishesPage(Me me, HowToTell howToTell, Coming coming) {
		this.me = me;
		this.howToTell = howToTell;
		this.coming = coming;
	}

	/**
	 * A channel that one can choose for.
	 *
	 * @param code its code
	 * @param words what people call it
	 * @param open whether it reaches the person; mail is always shown
	 * @param href where it is set up; null for mail
	 * @param topics what one can be told of through it
	 */
	record Way(String code, String words, boolean open, @Nullable String href, List<Row> topics) {
	}

	/**
	 * Something that one can be told of.
	 *
	 * @param field name of the field for how
	 * @param words what it is
	 * @param choices how one can be told
	 * @param ahead name of the field for days ahead; null where that makes no sense
	 */
	record Row(String field, String words, List<Choice> choices, @Nullable String ahead) {
	}

	/**
	 * A series that was left.
	 *
	 * @param channel code of the channel
	 * @param series code of the series
	 * @param words both, in words
	 */
	record Left(String channel, String series, String words) {
	}

	/**
	 * Why no reminders go to the person's address.
	 *
	 * @param reason what a mail server said
	 * @param since since when, in words
	 */
	record Refused(String reason, String since) {
	}

	@GetMapping("/reminders")
	String page(@RequestParam(required = false) @Nullable String saved, Model model) {
		Person person = this.me.person();
		model.addAttribute("saved", saved != null);
		return page(person, Map.of(), Map.of(), model);
	}

	@PostMapping("/reminders")
	String save(@RequestParam Map<String, String> fields, HttpServletResponse response, Model model) {
		Person person = this.me.person();
		List<String> asked = this.me.codes()
			.stream()
			.filter((code) -> fields.keySet().stream().anyMatch((name) -> name.startsWith(code + "-")))
			.toList();
		try {
			Wishes read = WishesFields.read(fields, asked, this.me.today(person.zone()));
			this.howToTell.save(person.id(), withTheRest(read, this.howToTell.of(person.id()), asked));
			return "redirect:/reminders?saved";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("saved", false);
			return page(person, fields, ex.byField(), model);
		}
	}

	/** Channels that weren't on the page keep what was chosen for them. */
	private static Wishes withTheRest(Wishes read, Wishes before, List<String> asked) {
		Map<String, Map<Topic, Wish>> chosen = new LinkedHashMap<>(before.chosen());
		chosen.keySet().removeAll(asked);
		chosen.putAll(read.chosen());
		return new Wishes(read.speech(), read.morning(), read.outlookDay(), read.quiet(), read.urgentAnyway(),
				read.pausedUntil(), chosen, before.stopped());
	}

	@PostMapping("/reminders/pause/end")
	String endPause() {
		this.howToTell.endPause(this.me.person().id());
		return "redirect:/reminders?saved";
	}

	@PostMapping("/reminders/address/again")
	String mailAgain() {
		this.howToTell.mailAgain(this.me.person());
		return "redirect:/reminders?saved";
	}

	@PostMapping("/reminders/resume")
	String resume(@RequestParam String channel, @RequestParam String series) {
		Person person = this.me.person();
		Series found = Stream.of(Series.values())
			.filter((one) -> one.code().equals(series))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no such series."));
		this.howToTell.resume(person.id(), channel, found);
		return "redirect:/reminders?saved";
	}

	private String page(Person person, Map<String, String> given, Map<String, String> errors, Model model) {
		LocalDate today = this.me.today(person.zone());
		Wishes wishes = this.howToTell.of(person.id());
		List<Way> ways = this.me.channels().stream().map((channel) -> way(channel, person)).toList();
		Map<String, String> form = WishesFields.of(wishes, this.me.codes(), today);
		form.replaceAll((name, value) -> given.getOrDefault(name, value));
		model.addAttribute("section", "reminders");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("ways", ways);
		model.addAttribute("days", days());
		model.addAttribute("languages", languages());
		model.addAttribute("systems", systems());
		standing(person, wishes, today, ways, model);
		model.addAttribute("next", NextRow.of(this.coming.of(person.id(), NEXT), person.zone(), this.me.channels()));
		return "reminders/wishes";
	}

	/** What somebody should know about how things stand. */
	private void standing(Person person, Wishes wishes, LocalDate today, List<Way> ways, Model model) {
		model.addAttribute("address", (person.email() != null) ? person.email() : "");
		model.addAttribute("confirmed", person.confirmed());
		model.addAttribute("refused", this.howToTell.silence(person)
			.map((one) -> new Refused(one.reason(), DayWords.of(LocalDate.ofInstant(one.since(), person.zone()))))
			.orElse(null));
		model.addAttribute("zone", person.zone().getId());
		LocalDate until = wishes.pausedUntil();
		model.addAttribute("paused", (until != null && wishes.pausedOn(today)) ? DayWords.of(until) : null);
		model.addAttribute("left", left(wishes));
		LocalDateTime morning = today.atTime(wishes.morning());
		LocalDateTime out = wishes.quiet().after(morning);
		model.addAttribute("later", out.equals(morning) ? null : out.toLocalTime().toString());
		model.addAttribute("noFrost", ways.stream().filter(Way::open).noneMatch((way) -> warns(wishes, way.code())));
	}

	private static boolean warns(Wishes wishes, String channel) {
		return switch (wishes.of(channel, Topic.TONIGHT).manner()) {
			case SINGLE -> !wishes.stopped(channel, Series.TONIGHT);
			case MORNING -> !wishes.stopped(channel, Series.MORNING);
			case WEEKLY, OFF -> false;
		};
	}

	private Way way(Channel channel, Person person) {
		boolean mail = channel.code().equals(Wishes.MAIL);
		List<Row> rows = Arrays.stream(Topic.values()).map((topic) -> row(channel.code(), topic)).toList();
		return new Way(channel.code(), channel.words(), channel.addresses(List.of(person)).containsKey(person.id()),
				mail ? null : "/reminders/" + channel.code(), rows);
	}

	private static Row row(String channel, Topic topic) {
		List<Choice> choices = topic.manners()
			.stream()
			.map((one) -> new Choice(one.code(), words(topic, one)))
			.toList();
		return new Row(WishesFields.manner(channel, topic), topic.words(), choices,
				WishesFields.AHEAD.contains(topic) ? WishesFields.ahead(channel, topic) : null);
	}

	/** A warning comes by itself, and an outlook is not "in the outlook". */
	private static String words(Topic topic, Manner manner) {
		return switch (topic) {
			case TONIGHT -> (manner == Manner.SINGLE) ? "at once" : manner.words();
			case ADVISORY -> switch (manner) {
				case MORNING -> "in the morning, at once what can't wait";
				case SINGLE -> "each at once";
				default -> manner.words();
			};
			case OUTLOOK -> (manner == Manner.WEEKLY) ? "once a week" : manner.words();
			default -> manner.words();
		};
	}

	private List<Left> left(Wishes wishes) {
		return this.me.channels()
			.stream()
			.flatMap((channel) -> Arrays.stream(Series.values())
				.filter((series) -> wishes.stopped(channel.code(), series))
				.map((series) -> new Left(channel.code(), series.code(),
						"%s: %s".formatted(channel.words(), words(series)))))
			.toList();
	}

	private static String words(Series series) {
		return switch (series) {
			case MORNING -> "the message of the morning";
			case OUTLOOK -> "the weekly outlook";
			case TONIGHT -> "warnings of a frosty night";
			case SINGLE -> "messages about one thing each";
			case ADVISORY -> "advisories";
		};
	}

	private static List<Choice> days() {
		return Arrays.stream(DayOfWeek.values())
			.map((day) -> new Choice(WishesFields.word(day), day.getDisplayName(TextStyle.FULL, Locale.ENGLISH)))
			.toList();
	}

	private static List<Choice> languages() {
		return Arrays.stream(Language.values()).map((one) -> new Choice(one.code(), one.words())).toList();
	}

	private static List<Choice> systems() {
		return Arrays.stream(Units.values()).map((one) -> new Choice(one.code(), one.words())).toList();
	}

}
