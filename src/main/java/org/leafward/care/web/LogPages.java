package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareLog;
import org.leafward.care.LogEntry;
import org.leafward.care.LogId;
import org.leafward.care.Logged;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The care log of a site. */
@Controller
class LogPages {

	private static final int PAGE = 20;

	private final CareLog log;

	private final LogWords words;

	private final Mine mine;

	LogPages(CareLog log, LogWords words, Mine mine) {
		this.log = log;
		this.words = words;
		this.mine = mine;
	}

	@GetMapping("/sites/{id}/log")
	String show(@PathVariable UUID id, @RequestParam(defaultValue = "") String of,
			@RequestParam(defaultValue = "0") int page, Model model) {
		Site site = this.mine.site(id);
		LogRequest form = new LogRequest(of, null, this.words.today(site).toString(), null, null, null, null);
		return show(site, Mine.planting("of", of), page, form, Map.of(), model);
	}

	private String show(Site site, @Nullable PlantingId only, int page, LogRequest form, Map<String, String> errors,
			Model model) {
		LocalDate today = this.words.today(site);
		List<LogEntry> entries = this.log.latest(site.id(), only, Given.page(page), PAGE);
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("only", (only != null) ? only.toString() : "");
		model.addAttribute("rows", this.words.rows(entries, this.words.labels(site), today));
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				entries.size() == PAGE && !this.log.latest(site.id(), only, (page + 1) * PAGE, 1).isEmpty());
		model.addAttribute("here", "/sites/%s/log?of=%s".formatted(site.id(), (only != null) ? only : ""));
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("places", this.words.places(site, "the whole site"));
		model.addAttribute("filters", this.words.places(site, "everything"));
		model.addAttribute("works", LogWords.works());
		model.addAttribute("units", LogWords.units());
		return "care/log";
	}

	@PostMapping("/sites/{id}/log")
	String add(@PathVariable UUID id, @ModelAttribute("form") LogRequest form, Model model, RedirectAttributes flash,
			HttpServletResponse response) {
		Site site = this.mine.site(id);
		try {
			Logged logged = this.log.log(site.id(), Mine.planting("planting", form.planting()),
					Given.text("work", form.work()), form.done().toWork(this.words.today(site)), this.mine.by(site));
			flash.addFlashAttribute("remarks", logged.remarks());
			return "redirect:/sites/" + site.id() + "/log";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(site, null, 0, form, ex.byField(), model);
		}
	}

	@PostMapping("/sites/{id}/log/{entry}/undo")
	String undo(@PathVariable UUID id, @PathVariable UUID entry) {
		Site site = this.mine.site(id);
		this.log.remove(site.id(), new LogId(entry), this.mine.by(site));
		return "redirect:/sites/" + site.id() + "/log";
	}

}
