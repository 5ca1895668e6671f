// The types of three.js would bring six packages along; what is used of it stands in one file.
declare module "three";
