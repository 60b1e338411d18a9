package org.leafward.reminders.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskNow;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Later;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.links.About;
import org.leafward.reminders.links.ActLink;
import org.leafward.reminders.links.MessageActs;
import org.leafward.reminders.links.SignedLinks;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * What somebody says of a task from a message. Whoever has the address may: it shows that
 * task and nothing else. Following the link only shows buttons, since programs that check
 * mail follow links too.
 */
@Controller
class ActPages {

	private static final String UNDO = "undo";

	private final SignedLinks links;

	private final MessageActs acts;

	private final Phrasebooks books;

	ActPages(SignedLinks links, MessageActs acts, Phrasebooks books) {
		this.links = links;
		this.acts = acts;
		this.books = books;
	}

	/** No search engine keeps such a page, whatever it answers. */
	@ModelAttribute
	void hide(HttpServletResponse response) {
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
	}

	@GetMapping("/r/{token}")
	String look(@PathVariable String token, HttpServletResponse response, Model model) {
		ActLink link = require(token);
		return show(token, link, "", false, response, model);
	}

	@PostMapping("/r/{token}")
	String act(@PathVariable String token, @RequestParam(required = false) @Nullable String act,
			HttpServletResponse response, Model model) {
		ActLink link = require(token);
		Optional<About> about = this.acts.about(link);
		if (about.isEmpty()) {
			return ended(response, model);
		}
		if (UNDO.equals(act)) {
			boolean undone = this.acts.undo(about.get());
			return show(token, link, undone ? "Taken back." : "There is nothing to take back any more.", false,
					response, model);
		}
		Act wanted = (act != null) ? read(act) : link.proposed();
		LinkWords words = LinkWords.of(this.books, about.get().wishes().speech());
		boolean done = this.acts.act(about.get(), wanted, words.say(button(Act.SKIP, about.get().task())));
		return show(token, link, done ? happened(wanted, about.get()) : why(wanted, about.get()), done, response,
				model);
	}

	private ActLink require(String token) {
		return this.links.readAct(token)
			.orElseThrow(() -> new NotThere("There is no such link. Copy the whole address from the message."));
	}

	private static Act read(String act) {
		return Arrays.stream(Act.values())
			.filter((one) -> code(one).equals(act))
			.findFirst()
			.orElseThrow(() -> new BadInput("that is nothing that one can say of a task", "act",
					"use done, later, skip or undo"));
	}

	private static String code(Act act) {
		return act.name().toLowerCase(Locale.ROOT);
	}

	private String show(String token, ActLink link, String said, boolean done, HttpServletResponse response,
			Model model) {
		Optional<About> found = this.acts.about(link);
		if (found.isEmpty()) {
			return ended(response, model);
		}
		About about = found.get();
		LinkWords words = LinkWords.of(this.books, about.wishes().speech());
		model.addAttribute("section", "");
		model.addAttribute("token", token);
		model.addAttribute("words", words);
		model.addAttribute("task", about.task());
		model.addAttribute("plants", about.tasks().stream().map((task) -> words.plant(task.plant())).toList());
		model.addAttribute("standing", about.standing().map(TaskNow::words).map(words::say).orElse(""));
		model.addAttribute("later", (about.laterDay() != null) ? words.say(again(about.laterDay())) : "");
		model.addAttribute("said", words.say(said));
		model.addAttribute("done", done);
		model.addAttribute("buttons", buttons(about, link.proposed(), words));
		model.addAttribute("undo", about.undo() || about.laterDay() != null);
		model.addAttribute("leave", leave(about));
		return "reminders/act";
	}

	/** What the message proposed, then the others; only what has an effect. */
	private static List<Choice> buttons(About about, Act proposed, LinkWords words) {
		return Stream.concat(Stream.of(proposed), Arrays.stream(Act.values()).filter((act) -> act != proposed))
			.filter(about::may)
			.map((act) -> new Choice(code(act), words.say(button(act, about.task()))))
			.toList();
	}

	private static String button(Act act, CareTask task) {
		return switch (act) {
			case DONE -> "I did it today";
			case LATER -> "Tell me again in three days";
			case SKIP -> (task.occurrence() > 0) ? "Not this time" : "Not this year";
		};
	}

	private static String happened(Act act, About before) {
		return switch (act) {
			case DONE -> "It is noted as done today.";
			case LATER -> again(before.later().get(0).day());
			case SKIP -> (before.task().occurrence() > 0) ? "It is left out this time." : "It is left out this year.";
		};
	}

	private static String again(LocalDate day) {
		return "You will be told again on %s.".formatted(DayWords.of(day));
	}

	/** Why nothing happened. */
	private static String why(Act act, About about) {
		return switch (about.task().state()) {
			case DONE -> "It is noted as done already.";
			case SKIPPED -> "It is left out already.";
			case WITHDRAWN -> "It is not needed any more.";
			case PLANNED -> switch (act) {
				case DONE -> about.standing()
					.map(TaskNow::doneFrom)
					.map((from) -> "It can be noted as done from %s on.".formatted(DayWords.of(from)))
					.orElse("It ends by itself.");
				case LATER -> notLater(about);
				case SKIP -> "It ends by itself.";
			};
		};
	}

	private static String notLater(About about) {
		if (about.wishes().stopped(about.told().channel(), Later.SERIES)) {
			return "You have left these messages.";
		}
		return (about.laterDay() != null) ? again(about.laterDay())
				: "It ends on %s, so there is no later day to tell you again."
					.formatted(DayWords.of(about.task().window().to()));
	}

	private @Nullable String leave(About about) {
		Series series = about.told().series();
		return (series != null) ? this.links.stopToken(about.told().person(), about.told().channel(), series) : null;
	}

	/** Whose it was isn't told any more, so neither is their language known. */
	private String ended(HttpServletResponse response, Model model) {
		response.setStatus(HttpStatus.GONE.value());
		model.addAttribute("section", "");
		model.addAttribute("words", LinkWords.of(this.books, Speech.USUAL));
		return "reminders/link-ended";
	}

}
