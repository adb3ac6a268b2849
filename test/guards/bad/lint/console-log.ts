export const shout = (): void => console.log('goal');
