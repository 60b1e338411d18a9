package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.Logged;
import org.leafward.care.TaskId;
import org.leafward.measure.BadInput;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The buttons beside tasks. One line of a list can stand for several tasks of a site. */
@Controller
class TaskActPages {

	private final CareLog log;

	private final LogWords words;

	private final TaskPage page;

	private final Mine mine;

	TaskActPages(CareLog log, LogWords words, TaskPage page, Mine mine) {
		this.log = log;
		this.words = words;
		this.page = page;
		this.mine = mine;
	}

	@PostMapping("/tasks/done")
	String done(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back,
			@ModelAttribute("form") WorkRequest form, Model model, RedirectAttributes flash,
			HttpServletResponse response) {
		CareTask first = this.mine.task(task.get(0));
		return act(first, back, form, "", model, response, () -> {
			List<Logged> logged = this.log.done(ids(task),
					form.toWork(this.words.today(this.mine.site(first.site().value()))), this.mine.by(first));
			flash.addFlashAttribute("remarks",
					logged.stream().flatMap((one) -> one.remarks().stream()).distinct().toList());
			return true;
		});
	}

	@PostMapping("/tasks/skip")
	String skip(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back,
			@RequestParam(defaultValue = "") String reason, Model model, HttpServletResponse response) {
		CareTask first = this.mine.task(task.get(0));
		return act(first, back, WorkRequest.NOTHING, reason, model, response,
				() -> this.log.skip(ids(task), reason, this.mine.by(first)));
	}

	@PostMapping("/tasks/undo")
	String undo(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back, Model model,
			HttpServletResponse response) {
		CareTask first = this.mine.task(task.get(0));
		return act(first, back, WorkRequest.NOTHING, "", model, response,
				() -> this.log.undo(ids(task), this.mine.by(first)));
	}

	private static List<TaskId> ids(List<UUID> tasks) {
		return tasks.stream().map(TaskId::new).toList();
	}

	/** What can't be done is told on the page of the first task, with what was typed. */
	private String act(CareTask first, @Nullable String back, WorkRequest form, String reason, Model model,
			HttpServletResponse response, Supplier<?> what) {
		try {
			what.get();
			return "redirect:" + address(first, back);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			Map<String, String> errors = ex.byField();
			return this.page.show(this.mine.task(first.id().value()), form, reason, errors, model);
		}
	}

	private static String address(CareTask first, @Nullable String back) {
		return switch ((back != null) ? back : "") {
			case "home" -> "/";
			case "site" -> "/sites/" + first.site() + "#now";
			default -> Lines.address(first);
		};
	}

}
