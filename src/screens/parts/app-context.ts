import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { App } from '../../app/app.ts';
import type { Session } from '../../app/session.ts';
import type { Shop } from '../../domain/shop/shop.ts';

export const AppContext = createContext<App | null>(null);
export const SessionContext = createContext<Session | null>(null);

/** The app around the screen. Throws outside of it, which only a wrong mounting can bring about. */
export function useApp(): App {
  const app = useContext(AppContext);
  if (!app) throw new Error('screen mounted outside the app');
  return app;
}

/** The open shop's session. Throws where no shop is open. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('screen mounted without an open shop');
  return session;
}

/** The shop as it is now; the component renders again whenever the shop changes. */
export function useShop(): Shop {
  return useSession().view.value.shop;
}
