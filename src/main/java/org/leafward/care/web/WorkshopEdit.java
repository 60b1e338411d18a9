package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PackVersion;
import org.leafward.care.RulePreviews;
import org.leafward.care.pack.PackTexts;
import org.leafward.care.workshop.PackDrafted;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.PublishConflict;
import org.leafward.care.workshop.Workshop;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.Problem;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/**
 * Changes a rule or a pack: write, look what it would change, publish. The text lives in
 * the form from one step to the next, so nothing typed is lost.
 */
@Controller
class WorkshopEdit {

	private final Workshop workshop;

	private final PackHistory history;

	private final PackTexts texts;

	private final RulePreviews previews;

	private final WorkshopPages pages;

	private final Viewers viewers;

	WorkshopEdit(Workshop workshop, PackHistory history, PackTexts texts, RulePreviews previews, WorkshopPages pages,
			Viewers viewers) {
		this.workshop = workshop;
		this.history = history;
		this.texts = texts;
		this.previews = previews;
		this.pages = pages;
		this.viewers = viewers;
	}

	/**
	 * What was typed.
	 *
	 * @param base the version that it began with, 0 for a new pack
	 * @param rule the rule that is changed; blank or null for the whole pack
	 * @param text the rule or the pack as written
	 * @param note what was changed and why
	 */
	record Typed(int base, @Nullable String rule, @Nullable String text, @Nullable String note) {

		boolean whole() {
			return this.rule == null || this.rule.isBlank();
		}

		String written() {
			return (this.text != null) ? this.text.replace("\r\n", "\n") : "";
		}

	}

	@GetMapping("/workshop/{pack}/edit")
	String open(@PathVariable String pack, @RequestParam(required = false) @Nullable String rule, Model model) {
		PackVersion newest = this.history.newest(pack).orElseThrow(() -> new NotThere("There is no rule pack " + pack));
		Optional<String> cut = (rule != null) ? this.texts.rule(newest.content(), rule).map(PackTexts.RuleText::text)
				: Optional.empty();
		show(pack, new Typed(newest.version(), cut.isPresent() ? rule : null, cut.orElse(newest.content()), ""), model);
		return "care/workshop-edit";
	}

	private static void show(String pack, Typed typed, Model model) {
		model.addAttribute("section", "rules");
		model.addAttribute("pack", pack);
		model.addAttribute("typed", typed);
		for (String name : List.of("problems", "clashes", "changed", "conflictLines")) {
			if (!model.containsAttribute(name)) {
				model.addAttribute(name, List.of());
			}
		}
		for (String name : List.of("preview", "conflict", "noteProblem")) {
			if (!model.containsAttribute(name)) {
				model.addAttribute(name, null);
			}
		}
		model.addAttribute("rows", Math.min(40, Math.max(12, typed.written().lines().count() + 2)));
	}

	@PostMapping("/workshop/{pack}/edit")
	String step(@PathVariable String pack, Typed typed, @RequestParam(defaultValue = "preview") String step,
			Model model, HttpServletResponse response) {
		int first = 1;
		try {
			if (!typed.whole()) {
				first = first(pack, typed);
			}
			String content = typed.whole() ? typed.written() : whole(pack, typed);
			if (step.equals("publish")) {
				PackVersion published = this.workshop.publish(pack, typed.base, content,
						(typed.note != null) ? typed.note : "", WorkshopPages.author(this.viewers));
				return "redirect:/workshop/%s?published=%d".formatted(pack, published.version());
			}
			preview(this.workshop.draft(pack, content), model);
		}
		catch (BrokenKnowledge ex) {
			int before = first - 1;
			model.addAttribute("problems",
					ex.problems().stream().map((problem) -> fact(pack, problem, before, typed)).toList());
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		catch (BadInput ex) {
			model.addAttribute("noteProblem", ex.what() + ": " + ex.mend() + ".");
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		catch (PublishConflict ex) {
			model.addAttribute("conflict", ex.getMessage());
			model.addAttribute("conflictLines", ex.changes());
			response.setStatus(HttpStatus.CONFLICT.value());
		}
		show(pack, typed, model);
		return "care/workshop-edit";
	}

	private void preview(PackDrafted draft, Model model) {
		model.addAttribute("preview", this.previews.of(draft.packs()));
		model.addAttribute("changed", draft.changed());
		model.addAttribute("clashes", draft.contradictions().stream().map((one) -> one.words()).toList());
	}

	private String base(String pack, Typed typed) {
		return this.history.require(pack, typed.base).content();
	}

	private int first(String pack, Typed typed) {
		return this.texts.rule(base(pack, typed), String.valueOf(typed.rule))
			.map(PackTexts.RuleText::firstLine)
			.orElse(1);
	}

	private String whole(String pack, Typed typed) {
		return this.texts.withRule(base(pack, typed), String.valueOf(typed.rule), typed.written())
			.orElseThrow(() -> new NotThere("There is no rule %s/%s".formatted(pack, typed.rule)));
	}

	/** Lines are counted in the text that was typed. */
	private static Fact fact(String pack, Problem problem, int before, Typed typed) {
		String words = problem.what() + ". To mend it: " + problem.mend() + ".";
		if (!problem.file().equals(pack)) {
			return new Fact(problem.file() + ", line " + problem.line(), words);
		}
		long line = (long) problem.line() - before;
		if (problem.line() == 0 || line < 1 || line > typed.written().lines().count()) {
			return new Fact("The pack as a whole", words);
		}
		return new Fact("Line " + line, words);
	}

	@PostMapping("/workshop/import")
	String load(@RequestParam(required = false) @Nullable MultipartFile file, Model model, HttpServletResponse response)
			throws IOException {
		List<Fact> problems;
		if (file == null || file.isEmpty()) {
			problems = List.of(new Fact("File", "No file was chosen. Choose a rule pack, a YAML file."));
		}
		else if (file.getSize() > PackVersion.LONGEST) {
			problems = List.of(new Fact("File",
					"The file has more than %d bytes. Split the pack into several.".formatted(PackVersion.LONGEST)));
		}
		else {
			byte[] content = file.getBytes();
			problems = this.texts.problems("the file", content)
				.stream()
				.map((one) -> new Fact((one.line() > 0) ? "Line " + one.line() : "File",
						one.what() + ". To mend it: " + one.mend() + "."))
				.toList();
			if (problems.isEmpty()) {
				String text = new String(content, StandardCharsets.UTF_8);
				String pack = this.texts.pack(text).orElseThrow();
				int base = this.history.newest(pack).map(PackVersion::version).orElse(0);
				show(pack, new Typed(base, null, text, ""), model);
				return "care/workshop-edit";
			}
		}
		model.addAttribute("problems", problems);
		this.pages.fill(model);
		response.setStatus(HttpStatus.BAD_REQUEST.value());
		return "care/workshop";
	}

}
