package org.leafward.workdays.web;

import java.time.Clock;
import java.util.List;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.workdays.Answers;
import org.leafward.workdays.Answers.Invited;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUps;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.Workdays;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The link in an invitation: yes or no without signing in. Following it changes nothing,
 * as programs that check mail follow links too; a button does.
 */
@Controller
class AnswerPages {

	private final Answers answers;

	private final Workdays workdays;

	private final SignUps signUps;

	private final Clock clock;

	AnswerPages(Answers answers, Workdays workdays, SignUps signUps, Clock clock) {
		this.answers = answers;
		this.workdays = workdays;
		this.signUps = signUps;
		this.clock = clock;
	}

	@GetMapping("/w/{token}")
	String show(@PathVariable String token, Model model) {
		Invited invited = invited(token);
		return show(invited, token, List.of(), model);
	}

	private String show(Invited invited, String token, List<String> remarks, Model model) {
		Workday day = this.workdays.find(invited.workday()).orElseThrow(AnswerPages::ended);
		SignUp mine = this.workdays.signUps(day.id())
			.stream()
			.filter((one) -> one.person().equals(invited.person()))
			.findFirst()
			.orElse(null);
		boolean open = day.state() == WorkdayState.FIXED && day.end().toInstant().isAfter(this.clock.instant());
		model.addAttribute("workday", day);
		model.addAttribute("times", Fields.clock(day.begins()) + " to " + Fields.clock(day.ends()));
		model.addAttribute("open", open);
		model.addAttribute("mine", (mine != null) ? mine.state().name() : null);
		model.addAttribute("lead", DayLead.of(day, mine, open));
		model.addAttribute("token", token);
		model.addAttribute("remarks", remarks);
		return "workdays/answer";
	}

	@PostMapping("/w/{token}")
	String answer(@PathVariable String token, @RequestParam(defaultValue = "") String come, Model model) {
		Invited invited = invited(token);
		try {
			switch (come) {
				case "yes" -> this.signUps.comeAsBefore(invited.workday(), invited.person());
				case "no" -> this.signUps.stayAway(invited.workday(), invited.person());
				default -> throw new BadInput("that is neither yes nor no", "come", "press one of the two buttons");
			}
		}
		catch (BadInput ex) {
			return show(invited, token, List.of(ex.what() + "."), model);
		}
		// No redirect: its header would tell the address to whatever stands in between.
		return show(invited, token, List.of(), model);
	}

	private Invited invited(String token) {
		return this.answers.find(token).orElseThrow(AnswerPages::ended);
	}

	private static NotThere ended() {
		return new NotThere("This link doesn’t work any more");
	}

}
