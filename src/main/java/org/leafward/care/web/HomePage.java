package org.leafward.care.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What matters this week. */
@Controller
class HomePage {

	private final ThisWeek.Reader week;

	private final Noted noted;

	private final Viewers viewers;

	HomePage(ThisWeek.Reader week, Noted noted, Viewers viewers) {
		this.week = week;
		this.noted = noted;
		this.viewers = viewers;
	}

	@GetMapping("/")
	String home(@RequestParam(required = false) @Nullable String all, Model model) {
		Viewer viewer = this.viewers.current();
		if (viewer.person() == null) {
			return "redirect:/sites";
		}
		PersonId person = new PersonId(viewer.person());
		model.addAttribute("section", "week");
		model.addAttribute("live", true);
		model.addAttribute("week", this.week.of(person, all != null));
		model.addAttribute("notedLines",
				(model.getAttribute(Noted.TASKS) instanceof String ids) ? this.noted.lines(ids, person) : List.of());
		return "care/home";
	}

}
