import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ruleWords } from '../../src/markup/attributes';
import { blockReaders } from '../../src/markup/elements/registry';
import { forms, root, subset, voidElements } from '../../src/markup/subset';
import { builtInHelpers } from '../../src/markup/template/helpers';
import { blockNames } from '../../src/markup/template/names';

describe('the subset', () => {
  it('names only forms that exist', () => {
    for (const [name, form] of forms) {
      for (const parent of form.within)
        expect(parent === root || parent in subset, `${name} within ${parent}`).toBe(true);
    }
  });

  it('reaches every form from the paper', () => {
    const reached = new Set<string>([root]);
    let before = 0;
    while (reached.size > before) {
      before = reached.size;
      for (const [name, form] of forms)
        if (form.within.some((parent) => reached.has(parent))) reached.add(name);
    }
    expect(forms.map(([name]) => name).filter((name) => !reached.has(name))).toEqual([]);
  });

  it('has at every place at most one form of an element without a class of its own', () => {
    for (const [name, form] of forms) {
      const rivals = forms.filter(
        ([other, rule]) => other !== name && rule.element === form.element && rule.marker === form.marker,
      );
      for (const parent of form.within) {
        expect(
          rivals.filter(([, rule]) => rule.within.includes(parent)),
          `${name} in ${parent}`,
        ).toEqual([]);
      }
    }
  });

  it('requires only attributes it has, and lets a form carry the class that chooses it', () => {
    for (const [name, form] of forms) {
      for (const required of form.required ?? []) expect(form.attributes, name).toHaveProperty(required);
      const rule = form.attributes.class;
      if (form.marker !== undefined)
        expect(rule?.kind === 'one-of' && rule.values, name).toContain(form.marker);
    }
  });

  it('has a reader for every form that makes a block, and for no other', () => {
    const asBlock = forms.filter(([, form]) => form.within.includes(root)).map(([name]) => name);
    expect(Object.keys(blockReaders).sort()).toEqual([...asBlock].sort());
  });

  it('lets nothing stand in an element that has no end', () => {
    for (const [name, form] of forms) {
      if (!voidElements.includes(form.element)) continue;
      expect(forms.filter(([, child]) => child.within.includes(name))).toEqual([]);
      expect(form.text).toBe('none');
    }
  });
});

describe('docs/markup.md', () => {
  const page = readFileSync(new URL('../../docs/markup.md', import.meta.url), 'utf8');
  const rows = page.split('\n').filter((line) => line.startsWith('| `<'));

  it('lists every form with its places, attributes and meaning, and nothing else', () => {
    expect(rows).toEqual(forms.map(([name]) => rowFor(name)));
  });

  it('names every block and every helper a template can use', () => {
    for (const name of [
      ...blockNames.map((block) => `{{#${block} `),
      ...Object.keys(builtInHelpers).map((helper) => `(${helper} `),
    ]) {
      expect(page).toContain(`\`${name}`);
    }
  });
});

/** The row of docs/markup.md that says what the subset says of a form. */
function rowFor(name: (typeof forms)[number][0]): string {
  const form = subset[name];
  const tag = form.marker === undefined ? `<${form.element}>` : `<${form.element} class="${form.marker}">`;
  const attributes = Object.entries(form.attributes)
    .filter(([attribute]) => !(attribute === 'class' && form.marker !== undefined))
    .map(
      ([attribute, rule]) =>
        `\`${attribute}\`${form.required?.includes(attribute) ? ' (needed)' : ''}: ${ruleWords(rule)}`,
    );
  return `| \`${tag}\` | ${form.within.join(', ')} | ${attributes.join('; ') || '–'} | ${form.meaning} |`;
}
