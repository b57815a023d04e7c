export const YieldPlace = () => <main />;
