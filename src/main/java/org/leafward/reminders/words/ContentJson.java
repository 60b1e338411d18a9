package org.leafward.reminders.words;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryText;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.language.Language;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.ForPrograms;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.Outlook;
import org.leafward.reminders.core.ReminderItem;
import org.leafward.reminders.core.Wording;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The content of a message as JSON. Every task stands for itself, so that a program may
 * sort and group as it likes; what would make it too long is left off and counted.
 */
final class ContentJson implements ForPrograms {

	/** Longest amount, caution and reason, code points. */
	private static final int LONGEST = 600;

	/** For all that isn't an entry. */
	private static final int FRAME = 600;

	private static final JsonMapper JSON = JsonMapper.shared();

	@Override
	public String write(Content content, Wording wording, Links links) {
		return new Document(wording, links).write(content);
	}

	/** One that is being written. */
	private static final class Document {

		private final Wording wording;

		private final Links links;

		private int room = MessageText.LONGEST_CONTENT - FRAME;

		private int leftOff;

		Document(Wording wording, Links links) {
			this.wording = wording;
			this.links = links;
		}

		String write(Content content) {
			ObjectNode root = JSON.createObjectNode();
			root.put("series", content.series().code());
			root.put("language", this.wording.language());
			if (!content.notices().isEmpty()) {
				fill(root.putArray("advisories"), content.notices(), this::notice);
			}
			fill(root.putArray("items"), content.items(), this::item);
			Outlook outlook = content.outlook();
			if (outlook != null) {
				ObjectNode ahead = root.putObject("outlook");
				ahead.put("day", outlook.today().toString());
				fill(ahead.putArray("thisWeek"), outlook.thisWeek(), this::task);
				fill(ahead.putArray("nextWeek"), outlook.nextWeek(), this::task);
				fill(ahead.putArray("open"), outlook.open(), this::task);
				fill(ahead.putArray("holdOffs"), outlook.holdOffs(), this::task);
				fill(ahead.putArray("notNeeded"), outlook.changed(), this::task);
			}
			root.put("leftOff", this.leftOff);
			root.put("link", this.links.home());
			return root.toString();
		}

		/** Once an entry didn't fit, none after it is looked at. */
		private <T> void fill(ArrayNode list, List<T> entries, Function<T, ObjectNode> form) {
			for (int at = 0; at < entries.size(); at++) {
				ObjectNode node = (this.room > 0) ? form.apply(entries.get(at)) : null;
				int length = (node != null) ? node.toString().length() + 1 : Integer.MAX_VALUE;
				if (node == null || length > this.room) {
					this.room = 0;
					this.leftOff += entries.size() - at;
					return;
				}
				this.room -= length;
				list.add(node);
			}
		}

		private ObjectNode notice(AdvisoryNotice notice) {
			Advisory advisory = notice.advisory();
			AdvisoryText text = advisory.text(Language.of("language", this.wording.language()));
			ObjectNode node = JSON.createObjectNode();
			node.put("advisory", advisory.id().toString());
			node.put("message", advisory.number());
			node.put("news", notice.news().name().toLowerCase(Locale.ROOT));
			own(node, "headline", text.headline());
			own(node, "what", text.what());
			own(node, "where", text.where());
			own(node, "when", text.when());
			own(node, "impacts", text.impacts());
			own(node, "toDo", text.toDo());
			own(node, "reason", advisory.reason());
			ArrayNode counties = node.putArray("counties");
			advisory.area().counties().stream().sorted().forEach(counties::add);
			node.put("severity", advisory.facts().severity().cap());
			node.put("urgency", advisory.facts().urgency().cap());
			node.put("certainty", advisory.facts().certainty().cap());
			node.put("onset", advisory.onset().toString());
			node.put("expires", advisory.expires().toString());
			node.put("link", this.links.home() + advisory.path());
			return node;
		}

		private void own(ObjectNode node, String name, @Nullable String words) {
			if (words != null && !words.isBlank()) {
				node.put(name, OneLine.of(this.wording.own(words), LONGEST));
			}
		}

		private ObjectNode item(ReminderItem item) {
			ObjectNode node = JSON.createObjectNode();
			node.put("topic", item.topic().code());
			node.setAll(task(item.task()));
			if (item.topic() == Topic.CHANGE && item.toldDay() != null) {
				node.put("change", item.fellAway() ? "not-needed" : "moved");
				node.put("told", item.toldDay().toString());
			}
			return node;
		}

		private ObjectNode task(CareTask task) {
			ObjectNode node = JSON.createObjectNode();
			node.put("task", task.id().toString());
			node.put("kind", task.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
			put(node, "title", task.text().title());
			node.put("plant", this.wording.plant(task.plant()));
			node.put("site", this.wording.site(task.siteName()));
			node.put("from", task.window().from().toString());
			node.put("to", task.window().to().toString());
			put(node, "amount", task.text().amount());
			put(node, "caution", task.text().caution());
			if (task.state() == TaskState.WITHDRAWN) {
				put(node, "reason", task.withdrawnBecause());
			}
			node.put("link", this.links.task(task.id()));
			return node;
		}

		private void put(ObjectNode node, String name, @Nullable String english) {
			if (english != null && !english.isBlank()) {
				node.put(name, OneLine.of(this.wording.said(english), LONGEST));
			}
		}

	}

}
