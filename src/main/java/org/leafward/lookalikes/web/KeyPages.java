package org.leafward.lookalikes.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.Problem;
import org.leafward.lookalikes.KeyVersion;
import org.leafward.lookalikes.PublishedKeys;
import org.leafward.lookalikes.core.Finding;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.KeyComparison;
import org.leafward.lookalikes.workshop.KeyWorkshop;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The look-alike key in the workshop: write, look what it would change in recorded cases,
 * publish. The text lives in the form from one step to the next, so nothing typed is
 * lost.
 */
@Controller
class KeyPages {

	private static final int SIZE = 20;

	/** Moved cases that are shown. */
	private static final int SHOWN = 30;

	private final KeyWorkshop workshop;

	private final PublishedKeys keys;

	private final People people;

	private final Viewers viewers;

	KeyPages(KeyWorkshop workshop, PublishedKeys keys, People people, Viewers viewers) {
		this.workshop = workshop;
		this.keys = keys;
		this.people = people;
		this.viewers = viewers;
	}

	/**
	 * A line of a list.
	 *
	 * @param label a file, a version, a place in a file or a case
	 * @param words what is said of it
	 */
	record Line(String label, String words) {
	}

	/**
	 * What was typed.
	 *
	 * @param base the version that it began with
	 * @param text the file as written
	 * @param note what was changed and why
	 */
	record Typed(int base, @Nullable String text, @Nullable String note) {

		String written() {
			return (this.text != null) ? this.text.replace("\r\n", "\n") : "";
		}

	}

	@GetMapping("/workshop/look-alikes")
	String files(Model model) {
		Key key = this.keys.current();
		model.addAttribute("section", "rules");
		model.addAttribute("lead",
				"%d causes, %d questions with %d answers, and %d pairs that the answers alone often can’t part."
					.formatted(key.causes().size(), key.questions().size(),
							key.questions().stream().mapToInt((one) -> one.answers().size()).sum(),
							key.pairs().size()));
		model.addAttribute("unusable", this.keys.unusable());
		model.addAttribute("files",
				this.workshop.contents().keySet().stream().map((file) -> new Line(file, words(file))).toList());
		return "lookalikes/key";
	}

	private String words(String file) {
		return this.workshop.versions(file, 0, 1)
			.stream()
			.findFirst()
			.map((one) -> "version %d; %s".formatted(one.version(), words(one)))
			.orElse("as it came with the server");
	}

	private String words(KeyVersion version) {
		String by = Optional.ofNullable(version.by())
			.flatMap(this.people::find)
			.map(Person::name)
			.orElse("a specialist");
		return "%s, %s: %s".formatted(DayWords.of(LocalDate.ofInstant(version.at(), ZoneOffset.UTC)), by,
				version.note());
	}

	@GetMapping("/workshop/look-alikes/{file}")
	String open(@PathVariable String file, @RequestParam(defaultValue = "0") int page,
			@RequestParam(required = false) @Nullable Integer published, Model model) {
		String content = content(file);
		model.addAttribute("published", published);
		show(file, new Typed(this.workshop.version(file), content, ""), Given.page(page), model);
		return "lookalikes/key-file";
	}

	private String content(String file) {
		return Optional.ofNullable(this.workshop.contents().get(file))
			.orElseThrow(() -> new NotThere("The look-alike key has no file " + file));
	}

	private void show(String file, Typed typed, int page, Model model) {
		List<KeyVersion> versions = this.workshop.versions(file, page, SIZE + 1);
		model.addAttribute("section", "rules");
		model.addAttribute("file", file);
		model.addAttribute("typed", typed);
		model.addAttribute("versions",
				versions.stream()
					.limit(SIZE)
					.map((one) -> new Line(String.valueOf(one.version()), words(one)))
					.toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", versions.size() > SIZE);
		model.addAttribute("rows", Math.min(40, Math.max(12, typed.written().lines().count() + 2)));
		for (String name : List.of("problems", "moved")) {
			if (!model.containsAttribute(name)) {
				model.addAttribute(name, List.of());
			}
		}
		for (String name : List.of("preview", "noteProblem", "published")) {
			if (!model.containsAttribute(name)) {
				model.addAttribute(name, null);
			}
		}
	}

	@PostMapping("/workshop/look-alikes/{file}")
	String step(@PathVariable String file, Typed typed, @RequestParam(defaultValue = "preview") String step,
			Model model, HttpServletResponse response) {
		content(file);
		try {
			if (step.equals("publish")) {
				KeyVersion published = this.workshop.publish(file, typed.base, typed.written(),
						(typed.note != null) ? typed.note : "", viewer());
				return "redirect:/workshop/look-alikes/%s?published=%d".formatted(file, published.version());
			}
			preview(this.workshop.draft(file, typed.written()).comparison(), model);
		}
		catch (BrokenKnowledge ex) {
			model.addAttribute("problems", ex.problems().stream().map(KeyPages::line).toList());
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		catch (BadInput ex) {
			model.addAttribute("noteProblem", ex.what() + ": " + ex.mend() + ".");
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		show(file, typed, 0, model);
		return "lookalikes/key-file";
	}

	@PostMapping("/workshop/look-alikes/{file}/back")
	String back(@PathVariable String file, @RequestParam int base, @RequestParam int version,
			@RequestParam(defaultValue = "") String note, Model model, HttpServletResponse response) {
		String content = content(file);
		try {
			KeyVersion published = this.workshop.goBack(file, base, version, note, viewer());
			return "redirect:/workshop/look-alikes/%s?published=%d".formatted(file, published.version());
		}
		catch (BadInput ex) {
			model.addAttribute("noteProblem", ex.what() + ": " + ex.mend() + ".");
		}
		catch (BrokenKnowledge ex) {
			model.addAttribute("problems", ex.problems().stream().map(KeyPages::line).toList());
		}
		response.setStatus(HttpStatus.BAD_REQUEST.value());
		show(file, new Typed(this.workshop.version(file), content, note), 0, model);
		return "lookalikes/key-file";
	}

	private @Nullable PersonId viewer() {
		UUID person = this.viewers.current().person();
		return (person != null) ? new PersonId(person) : null;
	}

	private static Line line(Problem problem) {
		return new Line((problem.line() > 0) ? "%s, line %d".formatted(problem.file(), problem.line()) : problem.file(),
				problem.what() + "; " + problem.mend());
	}

	private static void preview(KeyComparison comparison, Model model) {
		String settled = (comparison.settled() > 0)
				? " Of %d whose cause was settled the key in force ranks %d first, this one %d."
					.formatted(comparison.settled(), comparison.rightBefore(), comparison.rightAfter())
				: "";
		model.addAttribute("preview",
				(comparison.cases() == 0) ? "There are no recorded cases yet to try it on."
						: "It was tried on %d recorded cases; the first three causes would differ in %d."
							.formatted(comparison.cases(), comparison.moved().size()) + settled);
		model.addAttribute("moved", comparison.moved().stream().limit(SHOWN).map(KeyPages::line).toList());
	}

	private static Line line(KeyComparison.Moved moved) {
		return new Line(moved.recorded().label() + (moved.worse() ? " (the settled cause falls)" : ""),
				names(moved.before()) + " → " + names(moved.after()));
	}

	private static String names(List<Finding> findings) {
		return findings.stream().map((one) -> one.cause().name()).collect(Collectors.joining(", "));
	}

}
