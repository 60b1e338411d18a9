package org.leafward.care.web;

import java.util.UUID;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One task, opened to how its dates came about. */
@Controller
class TaskPage {

	private final TaskCalendar calendar;

	private final Viewers viewers;

	TaskPage(TaskCalendar calendar, Viewers viewers) {
		this.calendar = calendar;
		this.viewers = viewers;
	}

	@GetMapping("/tasks/{id}")
	String task(@PathVariable UUID id, Model model) {
		CareTask task = this.calendar.find(new TaskId(id))
			.filter((found) -> this.viewers.current().mayOpen(found.person().value()))
			.orElseThrow(() -> new NotThere("There is no task " + id));
		model.addAttribute("section", "week");
		model.addAttribute("task", task);
		model.addAttribute("mark", Lines.mark(task.kind()));
		model.addAttribute("explanation", this.calendar.explain(task.id()).orElse(null));
		return "care/task";
	}

}
