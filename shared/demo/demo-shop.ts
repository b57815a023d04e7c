import type { ShopEvent } from '../../src/domain/log/event.ts';

export function demoShop(_: { now: number }): readonly ShopEvent[] {
  return [];
}
