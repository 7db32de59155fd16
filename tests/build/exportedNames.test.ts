// One name for one thing: whoever searches the house for a name finds the one place that it comes from.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const HOUSE = join(import.meta.dirname, '../..');
const LAYERS = ['shared', 'electron', 'renderer'];

/** The names that a file exports by declaring them, be they types or values. */
function exportedNames(path: string, text: string): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, false);
  const names = source.statements.filter(isExported).flatMap((statement): readonly string[] => {
    if (!ts.isVariableStatement(statement)) return statement.name === undefined ? [] : [statement.name.text];
    return statement.declarationList.declarations.flatMap(({ name }) => namesIn(name));
  });
  // An overloaded function is declared more than once.
  return [...new Set(names)];
}

type Declaring =
  | ts.VariableStatement
  | ts.FunctionDeclaration
  | ts.ClassDeclaration
  | ts.InterfaceDeclaration
  | ts.TypeAliasDeclaration
  | ts.EnumDeclaration;

function isExported(statement: ts.Statement): statement is Declaring {
  const declares =
    ts.isVariableStatement(statement) ||
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement) ||
    ts.isEnumDeclaration(statement);
  return declares && (statement.modifiers ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
}

function namesIn(name: ts.BindingName): readonly string[] {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.flatMap((element) => (ts.isBindingElement(element) ? namesIn(element.name) : []));
}

/** The names that more than one of these files exports, each with the files. */
function sharedNames(files: Readonly<Record<string, string>>): readonly string[] {
  const homes = new Map<string, string[]>();
  for (const [path, text] of Object.entries(files)) {
    for (const name of exportedNames(path, text)) homes.set(name, [...(homes.get(name) ?? []), path]);
  }
  return [...homes]
    .filter(([, paths]) => paths.length > 1)
    .map(([name, paths]) => `${name}: ${paths.join(', ')}`);
}

function readHouse(): Readonly<Record<string, string>> {
  const paths = LAYERS.flatMap((layer) =>
    readdirSync(join(HOUSE, layer), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(layer, name)),
  );
  return Object.fromEntries(paths.map((path) => [path, readFileSync(join(HOUSE, path), 'utf8')]));
}

describe('An exported name', () => {
  it('has one home in the house', () => {
    const house = readHouse();
    expect(Object.keys(house).length).toBeGreaterThan(500);
    expect(sharedNames(house)).toEqual([]);
  });

  it.each([
    ['a function', 'export function price() {}'],
    ['an async function', 'export async function price() {}'],
    ['a constant', 'export const price = 1, cost = 2;'],
    ['a constant that is taken out of another', 'export const { price } = table;'],
    ['a class', 'export abstract class price {}'],
    ['a type', 'export type price = number;'],
    ['an interface', 'export interface price {}'],
    ['an enumeration', 'export enum price {}'],
  ])('that two files give to different things is found: %s', (_what, text) => {
    const twice = { 'shared/a.ts': text, 'renderer/b.tsx': 'export const price = 1;' };
    expect(sharedNames(twice)).toEqual(['price: shared/a.ts, renderer/b.tsx']);
  });

  it('is one that is exported: what stays in its file may be called alike', () => {
    const files = { 'shared/a.ts': 'const price = 1;', 'shared/b.ts': 'export const price = 1;' };
    expect(sharedNames(files)).toEqual([]);
  });
});
