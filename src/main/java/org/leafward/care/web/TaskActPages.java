package org.leafward.care.web;

import jakarta.servlet.http.HttpServletRequest;
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
import org.leafward.pages.Fragments;
import org.leafward.pages.TaskLine;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * The buttons beside tasks. One line of a list can stand for several tasks of a site.
 * Where a part of a page is asked for, the answer is what takes the line's place.
 */
@Controller
class TaskActPages {

	private static final String HOME = "home";

	private static final String SITE = "site";

	private final CareLog log;

	private final LogWords words;

	private final TaskPage page;

	private final Noted noted;

	private final ThisWeek.Reader week;

	private final Mine mine;

	TaskActPages(CareLog log, LogWords words, TaskPage page, Noted noted, ThisWeek.Reader week, Mine mine) {
		this.log = log;
		this.words = words;
		this.page = page;
		this.noted = noted;
		this.week = week;
		this.mine = mine;
	}

	/**
	 * A button that was pressed.
	 *
	 * @param tasks what for
	 * @param first the first of them
	 * @param back which page to come back to
	 * @param said what was done, without its object
	 * @param stays whether the tasks leave the lists of the page, so that it tells them
	 * @param part whether a part of the page is wanted
	 */
	private record Act(List<UUID> tasks, CareTask first, String back, String said, boolean stays, boolean part) {

		List<TaskId> ids() {
			return this.tasks.stream().map(TaskId::new).toList();
		}

	}

	private Act act(List<UUID> tasks, @Nullable String back, String said, boolean stays, HttpServletRequest request,
			HttpServletResponse response) {
		String page = (back != null) ? back : "";
		boolean part = Fragments.wanted(request, response) && (page.equals(HOME) || page.equals(SITE));
		return new Act(tasks, this.mine.task(tasks.get(0)), page, said, stays, part);
	}

	@PostMapping("/tasks/done")
	String done(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back,
			@ModelAttribute("form") WorkRequest form, Model model, RedirectAttributes flash, HttpServletRequest request,
			HttpServletResponse response) {
		Act act = act(task, back, "Noted as done", true, request, response);
		return answer(act, form, "", model, flash, response, () -> {
			List<Logged> logged = this.log.done(act.ids(),
					form.toWork(this.words.today(this.mine.site(act.first().site().value()))),
					this.mine.by(act.first()));
			return logged.stream().flatMap((one) -> one.remarks().stream()).distinct().toList();
		});
	}

	@PostMapping("/tasks/skip")
	String skip(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back,
			@RequestParam(defaultValue = "") String reason, Model model, RedirectAttributes flash,
			HttpServletRequest request, HttpServletResponse response) {
		Act act = act(task, back, "Left out this time", true, request, response);
		return answer(act, WorkRequest.NOTHING, reason, model, flash, response, () -> {
			this.log.skip(act.ids(), reason, this.mine.by(act.first()));
			return List.of();
		});
	}

	@PostMapping("/tasks/undo")
	String undo(@RequestParam List<UUID> task, @RequestParam(required = false) @Nullable String back, Model model,
			RedirectAttributes flash, HttpServletRequest request, HttpServletResponse response) {
		Act act = act(task, back, "Taken back", false, request, response);
		return answer(act, WorkRequest.NOTHING, "", model, flash, response, () -> {
			this.log.undo(act.ids(), this.mine.by(act.first()));
			return List.of();
		});
	}

	/**
	 * What can't be done is told on the page of the first task, with what was typed; or
	 * beside the line, which stays as it is.
	 */
	private String answer(Act act, WorkRequest form, String reason, Model model, RedirectAttributes flash,
			HttpServletResponse response, Supplier<List<String>> what) {
		CareTask first = act.first();
		try {
			List<String> remarks = what.get();
			if (act.part()) {
				return instead(act, remarks, model);
			}
			flash.addFlashAttribute("remarks", remarks);
			if (act.back().equals(HOME)) {
				flash.addFlashAttribute(Noted.WORDS, said(act, first.text().title(), first.plant()));
				if (act.stays()) {
					flash.addFlashAttribute(Noted.TASKS, Noted.ids(act.ids()));
				}
			}
			return "redirect:" + address(first, act.back());
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			if (act.part()) {
				Fragments.into(response, "#wrong-" + first.id());
				model.addAttribute("words", ex.byField().values());
				return "care/parts :: refused";
			}
			Map<String, String> errors = ex.byField();
			return this.page.show(this.mine.task(first.id().value()), form, reason, errors, model);
		}
	}

	private String instead(Act act, List<String> remarks, Model model) {
		List<TaskLine> lines = this.noted.instead(act.ids(), act.back());
		TaskLine line = lines.get(0);
		boolean home = act.back().equals(HOME);
		model.addAttribute("lines", lines);
		model.addAttribute("site", home);
		model.addAttribute("focus", act.tasks().get(0));
		model.addAttribute("said", said(act, line.title(), line.plant()));
		model.addAttribute("remarks", remarks);
		model.addAttribute("lead", home ? this.week.lead(act.first().person()) : null);
		return "care/parts :: acted";
	}

	private static String said(Act act, String title, String plant) {
		return "%s: %s, %s.".formatted(act.said(), title, plant);
	}

	private static String address(CareTask first, String back) {
		return switch (back) {
			case HOME -> "/";
			case SITE -> "/sites/" + first.site() + "#now";
			default -> Lines.address(first);
		};
	}

}
