package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import org.leafward.amounts.Amount;
import org.leafward.amounts.water.Ground;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;

/** The calculator of water, as a page and by API. Nothing is kept. */
@Controller
@Tag(name = "Calculators", description = "Amounts from figures that are given; nothing is stored")
class WaterPages {

	@GetMapping("/calculators/water")
	String water(@ModelAttribute("asked") WaterRequest asked, @RequestParam(defaultValue = "false") boolean fill,
			Model model, HttpServletResponse response) {
		boolean answered = asked.asked() && !fill;
		model.addAttribute("form", answered ? asked : Inputs.over(WaterRequest.class, asked, WaterRequest.usual()));
		model.addAttribute("kinds", Calculators.choices(WaterRequest.What.values(), WaterRequest.What::words));
		model.addAttribute("soils", Calculators.choices(Ground.values(), Ground::words));
		Calculators.answer(answered, model, response, () -> {
			Amount amount = asked.answer();
			model.addAttribute("lead", amount.words());
			model.addAttribute("explanation", amount.explanation());
		});
		return "amounts/water";
	}

	@Operation(summary = "How much water a bed, a tree, a shrub or a pot takes")
	@GetMapping("/api/calculators/water")
	@ResponseBody
	Amount water(@ParameterObject WaterRequest asked) {
		return (asked.asked() ? asked : WaterRequest.usual()).answer();
	}

}
