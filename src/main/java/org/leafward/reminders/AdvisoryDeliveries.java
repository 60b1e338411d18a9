package org.leafward.reminders;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.Deliveries;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.store.AdvisoryTable;
import org.springframework.stereotype.Service;

/** What became of the messages of advisories, by the words of the channels. */
@Service
class AdvisoryDeliveries implements Deliveries {

	private final AdvisoryTable table;

	private final Map<String, String> words;

	AdvisoryDeliveries(AdvisoryTable table, List<Channel> channels) {
		this.table = table;
		this.words = channels.stream().collect(Collectors.toMap(Channel::code, Channel::words));
	}

	@Override
	public SortedMap<String, Delivered> of(AdvisoryId id) {
		SortedMap<String, Delivered> all = new TreeMap<>();
		this.table.delivered(id)
			.forEach(
					(channel, number) -> all.merge(this.words.getOrDefault(channel, channel), number, Delivered::with));
		return all;
	}

	@Override
	public boolean making(AdvisoryId id) {
		return this.table.making(id);
	}

}
