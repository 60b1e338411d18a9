package org.leafward.lookalikes.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Question;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Fragments;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * One question at a time, and what the answers amount to. A question is a form; where
 * htmx runs, the next one takes its place.
 */
@Controller
class CasePages {

	private final Cases cases;

	private final CaseAccess access;

	private final CasePage page;

	CasePages(Cases cases, CaseAccess access, CasePage page) {
		this.cases = cases;
		this.access = access;
		this.page = page;
	}

	@GetMapping("/cases/{id}")
	String show(@PathVariable UUID id, Model model) {
		return this.page.show(this.access.seen(id), Map.of(), model);
	}

	/** The next question; where none would help, what it may be. */
	@GetMapping("/cases/{id}/ask")
	String ask(@PathVariable UUID id, Model model) {
		PlantCase one = this.access.seen(id).plantCase();
		CaseLook look = this.cases.look(one);
		return look.next().map((question) -> asking(look, question, null, model)).orElse("redirect:/cases/" + one.id());
	}

	@GetMapping("/cases/{id}/ask/{question}")
	String again(@PathVariable UUID id, @PathVariable String question, Model model) {
		PlantCase one = this.access.seen(id).plantCase();
		if (one.closed()) {
			return "redirect:/cases/" + one.id();
		}
		CaseLook look = this.cases.look(one);
		return asking(look, asked(look, question), null, model);
	}

	private static Question asked(CaseLook look, String id) {
		return look.key().question(id).orElseThrow(() -> new NotThere("There is no question " + id));
	}

	private static String asking(CaseLook look, Question question, @Nullable String error, Model model) {
		model.addAttribute("section", "cases");
		model.addAttribute("live", true);
		model.addAttribute("case", look.plantCase());
		model.addAttribute("ask", AskView.of(look, question, error));
		model.addAttribute("known", look.ranking().known());
		return "lookalikes/ask";
	}

	@PostMapping("/cases/{id}/answers")
	String answer(@PathVariable UUID id, @RequestParam String question,
			@RequestParam(required = false) @Nullable List<String> answer,
			@RequestParam(required = false) @Nullable String say, Model model, HttpServletRequest request,
			HttpServletResponse response) {
		PlantCase before = this.access.seen(id).plantCase();
		boolean part = Fragments.wanted(request, response);
		Set<String> ticked = new HashSet<>((answer != null) ? answer : List.of());
		if (Answers.NONE.equals(say) || Answers.CANNOT_TELL.equals(say)) {
			ticked = Set.of(say);
		}
		try {
			PlantCase now = "take-back".equals(say) ? this.cases.takeBack(before.id(), question)
					: this.cases.answer(before.id(), question, ticked);
			return onward(now, before.answers().has(question), part, model, response);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			CaseLook look = this.cases.look(before);
			String view = asking(look, asked(look, question), ex.what() + ": " + ex.mend() + ".", model);
			model.addAttribute("part", part);
			return part ? "lookalikes/ask :: asking" : view;
		}
	}

	/** To the next question; to the case when none is left, or an answer was changed. */
	private String onward(PlantCase now, boolean changed, boolean part, Model model, HttpServletResponse response) {
		CaseLook look = this.cases.look(now);
		Optional<Question> next = changed ? Optional.empty() : look.next();
		if (!part) {
			return "redirect:/cases/" + now.id() + (next.isPresent() ? "/ask" : "");
		}
		if (next.isEmpty()) {
			response.setHeader("HX-Redirect", "/cases/" + now.id());
		}
		else {
			asking(look, next.get(), null, model);
			model.addAttribute("part", true);
			return "lookalikes/ask :: asking";
		}
		return "lookalikes/ask :: leaving";
	}

	@PostMapping("/cases/{id}/struck")
	String strike(@PathVariable UUID id, @RequestParam String line, @RequestParam boolean struck, Model model,
			HttpServletResponse response) {
		CaseAccess.Seen seen = this.access.seen(id);
		try {
			this.cases.strike(seen.plantCase().id(), line, struck);
			return "redirect:/cases/" + seen.plantCase().id() + "#record-lines";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return this.page.show(this.access.seen(id), ex.byField(), model);
		}
	}

	@PostMapping("/cases/{id}/delete")
	String delete(@PathVariable UUID id) {
		this.cases.delete(this.access.own(id).id());
		return "redirect:/cases";
	}

}
