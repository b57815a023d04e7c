export const SetUpPlace = () => <main />;
