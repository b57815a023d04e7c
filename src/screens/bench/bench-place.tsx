export const BenchPlace = () => <main />;
