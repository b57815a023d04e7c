export const TraysPlace = () => <main />;
