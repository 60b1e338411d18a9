package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.water.NewTreePlan;
import org.leafward.measure.Explanation;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;

/** The watering plan of a new tree, as a page and by API. Nothing is kept. */
@Controller
@Tag(name = "Calculators", description = "Amounts from figures that are given; nothing is stored")
class NewTreePages {

	private final Clock clock;

	NewTreePages(Clock clock) {
		this.clock = clock;
	}

	/** A plan; litres for one watering of one tree. */
	record NewTreeView(String words, double lowLitres, double highLitres, List<StageView> stages, List<WeekView> weeks,
			Explanation explanation) {
	}

	/** A part with one rhythm; without days when the day of planting wasn't given. */
	record StageView(int fromWeek, int toWeek, @Nullable LocalDate from, @Nullable LocalDate to, String often) {
	}

	/** The days to water on in one of the first 26 weeks. */
	record WeekView(int week, List<LocalDate> days) {
	}

	@GetMapping("/calculators/new-tree")
	String newTree(@ModelAttribute("asked") NewTreeRequest asked, @RequestParam(defaultValue = "false") boolean fill,
			Model model, HttpServletResponse response) {
		NewTreeRequest usual = NewTreeRequest.usual(LocalDate.now(this.clock));
		boolean answered = asked.asked() && !fill;
		model.addAttribute("form", answered ? asked : Inputs.over(NewTreeRequest.class, asked, usual));
		Calculators.answer(answered, model, response, () -> {
			NewTreePlan plan = asked.plan();
			model.addAttribute("lead", plan.amount().words());
			model.addAttribute("stages", plan.stages());
			model.addAttribute("weeks", plan.weeks());
			model.addAttribute("explanation", plan.amount().explanation());
		});
		return "amounts/new-tree";
	}

	@Operation(summary = "When and how much to water a new tree until it has grown in")
	@GetMapping("/api/calculators/new-tree")
	@ResponseBody
	NewTreeView newTree(@ParameterObject NewTreeRequest asked) {
		NewTreePlan plan = asked.plan();
		return new NewTreeView(plan.amount().words(), tenths(plan.each().lowLitres()), tenths(plan.each().highLitres()),
				plan.stages()
					.stream()
					.map((one) -> new StageView(one.fromWeek(), one.toWeek(), one.from(), one.to(), one.often()))
					.toList(),
				plan.weeks().stream().map((one) -> new WeekView(one.number(), one.days())).toList(),
				plan.amount().explanation());
	}

	private static double tenths(double value) {
		return Math.round(value * 10) / 10.0;
	}

}
