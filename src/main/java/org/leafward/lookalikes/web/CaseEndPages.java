package org.leafward.lookalikes.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.lookalikes.Basis;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Sample;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.print.Paper;
import org.leafward.pages.print.PdfPrinter;
import org.leafward.register.Site;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** What comes of a case: tasks, a sample, its end, and a new one a season on. */
@Controller
class CaseEndPages {

	private final Cases cases;

	private final CaseEnds ends;

	private final CaseAccess access;

	private final CasePage page;

	private final PdfPrinter printer;

	private final ITemplateEngine templates;

	private final Clock clock;

	CaseEndPages(Cases cases, CaseEnds ends, CaseAccess access, CasePage page, PdfPrinter printer,
			ITemplateEngine templates, Clock clock) {
		this.cases = cases;
		this.ends = ends;
		this.access = access;
		this.page = page;
		this.printer = printer;
		this.templates = templates;
		this.clock = clock;
	}

	@PostMapping("/cases/{id}/follow-up")
	String followUp(@PathVariable UUID id, @RequestParam String cause, Model model, RedirectAttributes flash,
			HttpServletResponse response) {
		PlantCase one = this.access.own(id);
		try {
			this.ends.followUp(one.id(), cause);
			flash.addFlashAttribute("remarks",
					List.of("It is on your calendar. Choosing another cause takes the place of this."));
			return "redirect:/cases/" + one.id() + "#follow-up";
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	@GetMapping("/cases/{id}/sample.pdf")
	ResponseEntity<byte[]> form(@PathVariable UUID id, @RequestParam String cause,
			@RequestParam(required = false) @Nullable String paper) {
		CaseAccess.Seen seen = this.access.seen(id);
		PlantCase one = seen.plantCase();
		CaseLook look = this.cases.look(one);
		Cause suspected = look.key().cause(cause).orElseThrow(() -> new NotThere("There is no cause " + cause));
		Sample sample = suspected.sample();
		if (sample == null) {
			throw new NotThere("There is no sample for " + cause);
		}
		String region = this.page.site(one).map(Site::region).orElse("");
		Context model = new Context(Locale.ENGLISH);
		model.setVariable("case", one);
		model.setVariable("cause", suspected);
		model.setVariable("sample", sample);
		model.setVariable("laboratory", this.page.laboratory(one).orElse(null));
		model.setVariable("firstSeen", DayWords.of(one.seen()));
		model.setVariable("answered", CaseView.answered(look));
		model.setVariable("record", CaseView.record(look).stream().filter((line) -> !line.struck()).toList());
		model.setVariable("printed", DayWords.of(this.cases.today(one)));
		byte[] printed = this.printer.print(this.templates.process("lookalikes/sample-print", model),
				Paper.of(paper, region), this.clock.instant(), one.zone());
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("leafward-sample.pdf").build().toString())
			.body(printed);
	}

	@PostMapping("/cases/{id}/sampled")
	String sampled(@PathVariable UUID id, @RequestParam(defaultValue = "") String day, Model model,
			HttpServletResponse response) {
		PlantCase one = this.access.seen(id).plantCase();
		try {
			this.ends.sampled(one.id(), Given.date("day", day));
			return "redirect:/cases/" + one.id();
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	@PostMapping("/cases/{id}/close")
	String close(@PathVariable UUID id, @RequestParam(defaultValue = "") String found,
			@RequestParam(defaultValue = "") String result, @RequestParam(defaultValue = "false") boolean laboratory,
			Model model, HttpServletResponse response) {
		CaseAccess.Seen seen = this.access.seen(id);
		Basis basis = laboratory ? Basis.LABORATORY : seen.desk() ? Basis.HELP_DESK : Basis.ANSWERS;
		try {
			this.ends.close(seen.plantCase().id(), found.isBlank() ? null : found, basis, result);
			return "redirect:/cases/" + seen.plantCase().id();
		}
		catch (BadInput ex) {
			model.addAttribute("typedResult", result);
			return refused(id, ex, model, response);
		}
	}

	@PostMapping("/cases/{id}/reopen")
	String reopen(@PathVariable UUID id) {
		return "redirect:/cases/" + this.ends.reopen(this.access.seen(id).plantCase().id()).id();
	}

	@PostMapping("/cases/{id}/again")
	String again(@PathVariable UUID id, Model model, RedirectAttributes flash, HttpServletResponse response) {
		PlantCase one = this.access.own(id);
		try {
			PlantCase next = this.ends.again(one.id());
			if (next.answers().given().isEmpty()) {
				return "redirect:/cases/" + next.id() + "/ask";
			}
			flash.addFlashAttribute("remarks", List
				.of("This is a new case. What you answered before stands in it; strike what isn’t so any more."));
			return "redirect:/cases/" + next.id() + "#answers";
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	private String refused(UUID id, BadInput ex, Model model, HttpServletResponse response) {
		response.setStatus(HttpStatus.BAD_REQUEST.value());
		return this.page.show(this.access.seen(id), ex.byField(), model);
	}

}
