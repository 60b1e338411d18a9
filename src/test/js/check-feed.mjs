// Reads a feed with the engine of a desktop mail program's calendar (ical.js) and with one that
// home displays use (node-ical), and prints what each sees as JSON.
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import nodeIcal from 'node-ical';

const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(process.argv[2]));

const byIcalJs = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((component) => {
  const event = new ICAL.Event(component);
  return {
    uid: event.uid,
    summary: event.summary,
    description: event.description,
    from: event.startDate.toString(),
    end: event.endDate.toString(),
    status: component.getFirstPropertyValue('status'),
  };
});

const day = (date) => {
  const two = (number) => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
};

const byNodeIcal = Object.values(nodeIcal.sync.parseICS(text))
  .filter((item) => item.type === 'VEVENT')
  .map((event) => {
    if (event.datetype !== 'date') {
      throw new Error(`${event.uid} has a time: ${event.datetype}`);
    }
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      from: day(event.start),
      end: day(event.end),
      status: event.status,
    };
  });

process.stdout.write(JSON.stringify({ 'ical.js': byIcalJs, 'node-ical': byNodeIcal }));
