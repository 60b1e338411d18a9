package org.leafward.amounts.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The list of all calculators. */
@Controller
class CalculatorPages {

	@GetMapping("/calculators")
	String all(Model model) {
		model.addAttribute("section", "calculators");
		model.addAttribute("calculators", Calculators.ALL);
		return "amounts/calculators";
	}

}
