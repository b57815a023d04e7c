export const DayPlace = () => <main />;
