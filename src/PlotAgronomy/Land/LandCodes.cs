namespace PlotAgronomy.Land;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class LandCodes
{
    internal const string AreaLarge = "land-area-large";
    internal const string AskOutline = "land-ask-outline";
    internal const string FilePartSkipped = "land-file-part-skipped";
    internal const string FixError = "land-fix-error";
    internal const string FixErrorUnknown = "land-fix-error-unknown";
    internal const string GuessOff = "land-guess-off";
    internal const string LargeOutline = "land-large-outline";
    internal const string LatitudeUnlikely = "land-latitude-unlikely";
    internal const string LoopsCut = "land-loops-cut";
    internal const string MarksAsCorners = "land-marks-as-corners";
    internal const string OutlineAssumed = "land-outline-assumed";
    internal const string OutlineOpen = "land-outline-open";
    internal const string PaceCourseShort = "land-pace-course-short";
    internal const string PaceDisagree = "land-pace-disagree";
    internal const string PaceSingleWalk = "land-pace-single-walk";
    internal const string PaceStated = "land-pace-stated";
    internal const string PaceUnlikely = "land-pace-unlikely";
    internal const string RingNotClosed = "land-ring-not-closed";
    internal const string SidesRepeatUnit = "land-sides-repeat-unit";
    internal const string SlopeCorrected = "land-slope-corrected";
    internal const string SlopeFollowed = "land-slope-followed";
    internal const string SmallTrack = "land-small-track";
    internal const string Steep = "land-steep";
    internal const string StripSplits = "land-strip-splits";
    internal const string StripTakesAll = "land-strip-takes-all";
    internal const string TinyOutline = "land-tiny-outline";
    internal const string TrackJoined = "land-track-joined";
}
