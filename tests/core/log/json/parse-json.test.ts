import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAX_JSON_DEPTH } from '../../../../core/log/limits.ts';
import { parseJson, type JsonNode } from '../../../../core/log/json/parse-json.ts';

/** The node as the platform would have given it, for comparing. */
const plain = (node: JsonNode | null): unknown => {
  if (node === null) return undefined;
  if (node.kind === 'array') return node.items.map(plain);
  if (node.kind === 'object') return node.entries.map(([key, value]) => [key, plain(value)]);
  return node.isString ? node.text : (JSON.parse(node.text) as unknown);
};
const asEntries = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(asEntries);
  if (typeof value !== 'object' || value === null) return value;
  return Object.entries(value).map(([key, member]) => [key, asEntries(member)]);
};

test('reads what the platform reads', () => {
  fc.assert(
    fc.property(fc.jsonValue({ depthSize: 'medium' }), fc.nat(3), (value, blanks) => {
      const text = `${JSON.stringify(value, null, blanks)} `;
      const { node, fault } = parseJson(text);
      expect(fault).toBe('none');
      expect(plain(node)).toEqual(asEntries(JSON.parse(text)));
    }),
    { numRuns: 1000 },
  );
});

test('knows the characters that each value covers', () => {
  const { node, end } = parseJson(' [1, {"a": "b"}] x');
  expect([node?.from, node?.to, end]).toEqual([1, 16, 16]);
  const items = node?.kind === 'array' ? node.items : [];
  expect([items[1]?.from, items[1]?.to]).toEqual([5, 15]);
});

test('keeps names in order, twice if they come twice, and never as keys of an object', () => {
  const { node } = parseJson('{"b":1,"__proto__":2,"b":3}');
  expect(plain(node)).toEqual([
    ['b', 1],
    ['__proto__', 2],
    ['b', 3],
  ]);
});

test('takes what languages write beyond the standard', () => {
  const { node, fault } = parseJson('[NaN, Infinity, None, 1,]');
  expect(fault).toBe('none');
  expect(
    node?.kind === 'array' && node.items.map((item) => (item.kind === 'scalar' ? item.text : '')),
  ).toEqual(['NaN', 'Infinity', 'None', '1']);
});

describe('a text that ends or breaks in the middle', () => {
  test('gives what was complete before', () => {
    const cut = parseJson('[{"a":1},{"a":2},{"a":');
    expect(cut.fault).toBe('cut');
    expect(plain(cut.node)).toEqual([[['a', 1]], [['a', 2]], []]);
    expect(parseJson('[1,2,34')).toMatchObject({ fault: 'cut' });
    expect(plain(parseJson('[1,2,34').node)).toEqual([1, 2]);
    expect(parseJson('[1,2,#]').fault).toBe('broken');
    expect(parseJson('').fault).toBe('cut');
  });

  test('never throws but for depth', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'[]{}",:\\u0012ab \n'), maxLength: 60 }),
        (text) => {
          const { end } = parseJson(text);
          expect(end).toBeLessThanOrEqual(text.length);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('is refused beyond a depth', () => {
    const deep = (levels: number): string => '['.repeat(levels) + ']'.repeat(levels);
    expect(parseJson(deep(MAX_JSON_DEPTH)).fault).toBe('none');
    expect(() => parseJson(deep(MAX_JSON_DEPTH + 1))).toThrow(
      expect.objectContaining({ code: 'not-readable' }),
    );
  });
});
