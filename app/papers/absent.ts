/** Stands in for packages that the PDF library only asks for to turn web pages into pictures, which is never done here. */
export default null;
