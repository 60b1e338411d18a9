package org.leafward.care.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.care.TaskLines;
import org.leafward.care.AddedTasks;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.RampPictures;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskStates;
import org.leafward.pages.TaskActs;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One task: where it stands, what may be done with it, and how its dates came about. */
@Controller
class TaskPage {

	private final TaskCalendar calendar;

	private final TaskStates states;

	private final CareLog log;

	private final LogWords words;

	private final Mine mine;

	private final RampPictures ramps;

	private final AddedTasks added;

	TaskPage(TaskCalendar calendar, TaskStates states, CareLog log, LogWords words, Mine mine, RampPictures ramps,
			AddedTasks added) {
		this.calendar = calendar;
		this.states = states;
		this.log = log;
		this.words = words;
		this.mine = mine;
		this.ramps = ramps;
		this.added = added;
	}

	@GetMapping("/tasks/{id}")
	String task(@PathVariable UUID id, Model model) {
		return show(this.mine.seenTask(id), WorkRequest.NOTHING, "", Map.of(), model);
	}

	String show(CareTask task, WorkRequest form, String reason, Map<String, String> errors, Model model) {
		SeenSite seen = this.mine.seen(task.site().value());
		Site site = seen.site();
		ZoneId zone = site.zone();
		LocalDate today = this.words.today(site);
		model.addAttribute("section", "week");
		model.addAttribute("task", task);
		model.addAttribute("link", this.added.link(task.id()).orElse(null));
		model.addAttribute("mark", TaskLines.mark(task.kind()));
		model.addAttribute("seen", seen);
		// It names distances from the place to stations.
		model.addAttribute("explanation", seen.mayChange() ? this.calendar.explain(task.id()).orElse(null) : null);
		model.addAttribute("now", this.states.of(List.of(task)).get(task.id()));
		model.addAttribute("acts", new TaskActs(List.of(task.id().value()), true, true, true, "task"));
		model.addAttribute("entry",
				this.log.of(task.id())
					.filter((entry) -> seen.mayChange())
					.map((entry) -> this.words.rows(List.of(entry), this.words.labels(site), today).get(0))
					.orElse(null));
		model.addAttribute("history",
				seen.mayChange() ? this.words.steps(task, this.states.history(task.id()), zone) : List.of());
		model.addAttribute("ramp", this.ramps.of(task).orElse(null));
		model.addAttribute("form", (form == WorkRequest.NOTHING) ? WorkRequest.on(today) : form);
		model.addAttribute("reason", reason);
		model.addAttribute("errors", errors);
		model.addAttribute("units", LogWords.units());
		return "care/task";
	}

}
