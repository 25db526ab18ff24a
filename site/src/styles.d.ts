// Style sheets are imported for their effect: the bundler joins them.
declare module "*.css";
