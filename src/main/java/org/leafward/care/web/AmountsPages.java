package org.leafward.care.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.CareTask;
import org.leafward.care.KeptCalculation;
import org.leafward.care.KeptCalculations;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Given;
import org.leafward.pages.Formats;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * The amounts of a planting: what its tasks say now, calculators with its figures filled
 * in, and the calculations that were kept for it.
 */
@Controller
class AmountsPages {

	private static final int PAGE = 10;

	private static final int MOST_TASKS = 12;

	private final Calculations calculations;

	private final KeptCalculations kept;

	private final PrefilledCalculators prefilled;

	private final TaskCalendar calendar;

	private final OpenSites sites;

	private final Register register;

	private final Mine mine;

	private final Clock clock;

	AmountsPages(Calculations calculations, KeptCalculations kept, PrefilledCalculators prefilled,
			TaskCalendar calendar, OpenSites sites, Register register, Mine mine, Clock clock) {
		this.calculations = calculations;
		this.kept = kept;
		this.prefilled = prefilled;
		this.calendar = calendar;
		this.sites = sites;
		this.register = register;
		this.mine = mine;
		this.clock = clock;
	}

	/**
	 * A kept calculation.
	 *
	 * @param id identifier
	 * @param title what it is about
	 * @param words the answer
	 * @param day on which it was kept, in words
	 * @param by who kept it
	 * @param href the calculator with what it was asked
	 */
	record Row(UUID id, String title, String words, String day, String by, String href) {
	}

	@GetMapping("/plantings/{id}/amounts")
	String amounts(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page, Model model) {
		Planting planting = this.sites.planting(id);
		Site site = this.register.require(planting.site());
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		Formats formats = new Formats(today.getYear());
		List<KeptCalculation> rows = this.kept.latest(planting.id(), Given.page(page), PAGE);
		model.addAttribute("section", "sites");
		model.addAttribute("planting", planting);
		model.addAttribute("site", site);
		model.addAttribute("tasks",
				Gathered.lines(Gathered.withoutRepeats(tasks(planting, today))).stream().limit(MOST_TASKS).toList());
		model.addAttribute("calculators", this.prefilled.of(planting, site));
		model.addAttribute("kept", rows.stream().map((one) -> row(one, formats)).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				rows.size() == PAGE && !this.kept.latest(planting.id(), (page + 1) * PAGE, 1).isEmpty());
		model.addAttribute("here", "/plantings/" + planting.id() + "/amounts");
		return "care/amounts";
	}

	private List<CareTask> tasks(Planting planting, LocalDate today) {
		return this.calendar.ofSite(planting.site(), new DayWindow(today, today.plusYears(1)))
			.stream()
			.filter((task) -> planting.id().equals(task.planting()) && task.state() == TaskState.PLANNED
					&& task.text().amount() != null)
			.toList();
	}

	private Row row(KeptCalculation one, Formats formats) {
		return new Row(one.id(),
				this.calculations.titles().getOrDefault(one.calculator(), "A calculator that is no more"), one.words(),
				formats.day(one.day()), this.mine.name(one.by()),
				"/calculators/%s?%s&for=%s".formatted(one.calculator(), one.inputs(), one.planting()));
	}

	@PostMapping("/sites/{id}/kept/{kept}/delete")
	String delete(@PathVariable UUID id, @PathVariable UUID kept, RedirectAttributes flash) {
		Site site = this.mine.site(id);
		PlantingId planting = this.kept.remove(site.id(), kept);
		flash.addFlashAttribute("remarks", List.of("The calculation is deleted; the figures of the planting stay."));
		return "redirect:/plantings/" + planting + "/amounts#kept";
	}

}
