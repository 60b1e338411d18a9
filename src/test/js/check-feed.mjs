// Reads feeds with the engine of a desktop mail program's calendar (ical.js) and with one that
// home displays use (node-ical), and prints what each sees as JSON.
//   node check-feed.mjs <file> <engine>...
// The file holds one document after the other, parted by a NUL. For each engine there is a list
// with, for each document, the list of what it sees in it.
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import nodeIcal from 'node-ical';

const [file, ...engines] = process.argv.slice(2);
const documents = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file)).split('\0');

const string = (value) => (value ? value.toString() : null);

const byIcalJs = (text) => new ICAL.Component(ICAL.parse(text)).getAllSubcomponents()
  .map((component) => ({
    kind: component.name.toUpperCase(),
    uid: component.getFirstPropertyValue('uid'),
    summary: component.getFirstPropertyValue('summary'),
    description: component.getFirstPropertyValue('description'),
    from: string(component.getFirstPropertyValue('dtstart')),
    to: string(component.getFirstPropertyValue(component.name === 'vtodo' ? 'due' : 'dtend')),
    status: component.getFirstPropertyValue('status'),
    alarms: component.getAllSubcomponents('valarm').length,
  }));

const day = (date) => {
  if (!date) {
    return null;
  }
  if (date.dateOnly !== true) {
    throw new Error(`a time where a day should be: ${date}`);
  }
  const two = (number) => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
};

const byNodeIcal = (text) => Object.values(nodeIcal.sync.parseICS(text))
  .filter((item) => item.type === 'VEVENT' || item.type === 'VTODO')
  .map((item) => ({
    kind: item.type,
    uid: item.uid,
    summary: item.summary,
    description: item.description,
    from: day(item.start),
    to: day(item.type === 'VTODO' ? item.due : item.end),
    status: item.status,
    alarms: (item.alarms ?? []).length,
  }));

const known = { 'ical.js': byIcalJs, 'node-ical': byNodeIcal };
process.stdout.write(JSON.stringify(Object.fromEntries(engines.map((name) => [name, documents.map(known[name])]))));
