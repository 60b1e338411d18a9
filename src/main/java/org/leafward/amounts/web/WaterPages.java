package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.leafward.amounts.Amount;
import org.leafward.amounts.water.Ground;
import org.leafward.measure.BadInput;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.ResponseBody;

/** The calculator of water, as a page and by API. Nothing is kept. */
@Controller
@Tag(name = "Calculators", description = "Amounts from figures that are given; nothing is stored")
class WaterPages {

	@GetMapping("/calculators/water")
	String water(@ModelAttribute("asked") WaterRequest asked, Model model, HttpServletResponse response) {
		model.addAttribute("section", "calculators");
		model.addAttribute("form", asked.asked() ? asked : WaterRequest.usual());
		model.addAttribute("errors", Map.of());
		model.addAttribute("kinds", Calculators.choices(WaterRequest.What.values(), WaterRequest.What::words));
		model.addAttribute("soils", Calculators.choices(Ground.values(), Ground::words));
		if (asked.asked()) {
			try {
				Amount amount = asked.answer();
				model.addAttribute("lead", amount.words());
				model.addAttribute("explanation", amount.explanation());
			}
			catch (BadInput ex) {
				response.setStatus(HttpStatus.BAD_REQUEST.value());
				model.addAttribute("errors", ex.byField());
			}
		}
		return "amounts/water";
	}

	@Operation(summary = "How much water a bed, a tree, a shrub or a pot takes")
	@GetMapping("/api/calculators/water")
	@ResponseBody
	Amount water(@ParameterObject WaterRequest asked) {
		return (asked.asked() ? asked : WaterRequest.usual()).answer();
	}

}
