namespace PlotAgronomy.Sample.Commands;

/// <summary>One thing a calibration may need to know, by option or by question.</summary>
/// <param name="Name">Name of the option.</param>
/// <param name="Help">What the option takes.</param>
/// <param name="Question">What a person is asked.</param>
/// <param name="Many">True when the option may be given several times.</param>
internal sealed record CalibrationQuestion(string Name, string Help, string Question, bool Many = false)
{
    internal static readonly CalibrationQuestion Material = new(
        "material",
        "What is in the hopper.",
        "What is in the hopper? (blank: seed)"
    );
    internal static readonly CalibrationQuestion Rate = new(
        "rate",
        "Rate wanted of what is in the hopper, such as '8 lb/ac'.",
        "What rate do you want on the ground, such as 8 lb/ac? Count everything in the hopper, coating and carrier too."
    );
    internal static readonly CalibrationQuestion Swath = new(
        "swath",
        "Distance between passes, such as '15 ft'; half of the throw when nothing better is known.",
        "How far apart will your passes be, such as 15 ft? Half of the throw, when you know nothing better."
    );
    internal static readonly CalibrationQuestion Way = new(
        "way",
        "'run' (weigh before and after a taped course) or 'catch' (catch in a bucket for a timed spell).",
        "How did you measure: 'run' (weighed before and after a taped course) or 'catch' (caught in a bucket for a timed spell)?"
    );
    internal static readonly CalibrationQuestion Course = new(
        "course",
        "Length of the taped course, such as '200 ft'.",
        "How long was the taped course, such as 200 ft?"
    );
    internal static readonly CalibrationQuestion CourseTime = new(
        "course-time",
        "Time to walk the course, such as '46 s'.",
        "How long did you take to walk it, such as 46 s?"
    );
    internal static readonly CalibrationQuestion Used = new(
        "used",
        "Weight that left the hopper on the course; once for each run.",
        "What weight left the hopper on it, such as 0.55 lb? Several runs at one setting: 0.55 lb; 0.54 lb; 0.56 lb",
        Many: true
    );
    internal static readonly CalibrationQuestion CatchTime = new(
        "catch-time",
        "Time of the catch, such as '30 s'.",
        "How long did you crank into the bucket, such as 30 s?"
    );
    internal static readonly CalibrationQuestion Caught = new(
        "caught",
        "Weight caught, without the bucket; once for each catch.",
        "What weight was in the bucket, the bucket's own taken off, such as 6.4 oz? Several catches at one setting: 6.2 oz; "
            + "6.4 oz; 6.6 oz",
        Many: true
    );
    internal static readonly CalibrationQuestion PaceTime = new(
        "pace-time",
        "Time to walk 100 ft at working pace, such as '23 s'.",
        "How long do you take for 100 ft at working pace, such as 23 s?"
    );
    internal static readonly CalibrationQuestion Setting = new(
        "setting",
        "Gate setting of the runs, a number on your own scale.",
        "At what number of its scale did the gate stand? (blank: not known)"
    );
    internal static readonly CalibrationQuestion Gate = new(
        "gate",
        "A setting and the flow measured there, such as '4=0.62 lb/min'; once for each. Two settings, that of the runs "
            + "counted, give a number for the gate.",
        "Flows you measured at other settings, such as 4=0.62 lb/min; 6=1.55 lb/min (blank: none)",
        Many: true
    );
    internal static readonly CalibrationQuestion ScaleError = new(
        "scale-error",
        "How far the scale may be off, such as '0.1 oz'.",
        "How far may your scale be off, such as 0.1 oz? (blank: not counted)"
    );
    internal static readonly CalibrationQuestion TimeError = new(
        "time-error",
        "How far the stopwatch may be off, such as '0.5 s'.",
        "How far may your stopwatch be off, such as 0.5 s? (blank: not counted)"
    );
    internal static readonly CalibrationQuestion CourseError = new(
        "course-error",
        "How far the length of the course may be off, such as '1 ft'.",
        "How far may the length of your course be off, such as 1 ft? (blank: not counted)"
    );
    internal static readonly CalibrationQuestion PaceError = new(
        "pace-error",
        "How much your time for 100 ft varies while you sow, such as '1 s'.",
        "How much does your time for 100 ft vary while you sow, such as 1 s? (blank: not counted)"
    );
    internal static readonly CalibrationQuestion SwathError = new(
        "swath-error",
        "How well the distance between passes is kept, such as '1 ft'.",
        "How far may a pass lie off its place, such as 1 ft? (blank: not counted)"
    );
    internal static readonly CalibrationQuestion Plot = new(
        "plot",
        "Plot area, such as '0.25 ac'.",
        "How large is the plot, such as 0.25 ac? (blank: not needed)"
    );

    internal static readonly IReadOnlyList<CalibrationQuestion> All =
    [
        Material,
        Rate,
        Swath,
        Way,
        Course,
        CourseTime,
        Used,
        CatchTime,
        Caught,
        PaceTime,
        Setting,
        Gate,
        ScaleError,
        TimeError,
        CourseError,
        PaceError,
        SwathError,
        Plot,
    ];
}
