using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>The tasks of a season with their days, counted back and on from sowing, or over the year of a standing
/// plot.</summary>
/// <remarks>Intervals are rows of a table with their sources; where no institution prints one it is common practice and says
/// so. What is bought and how much is not told here. A forecast goes before a date.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonCalendar
{
    private readonly SeasonRequest request;
    private readonly SmotherDates? smother;

    private SeasonCalendar(SeasonRequest request, SmotherDates? smother)
    {
        this.request = request;
        this.smother = smother;
        Tasks = TaskOrder.Of(new SeasonDrafts(request, smother).All(), request.SampledOn, request.SowOn);
    }

    /// <summary>Gets the tasks by their latest days; one without a date stands before what is done after it.</summary>
    public ImmutableArray<SeasonTask> Tasks { get; }

    /// <summary>Gets the day of sowing that all is counted from; of a standing plot the day asked about; null while it is not
    /// set.</summary>
    public DateOnly? SowOn => request.SowOn;

    /// <summary>Gets a value indicating whether a stand is kept, and nothing is sown.</summary>
    public bool IsStanding => request.IsStanding;

    /// <summary>Gets what is late or too short, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([.. LimeIsLate(), .. smother?.Findings ?? [], .. Tasks.Where(t => t.DaysShort > 0).Select(TooShort)]);

    /// <summary>Lays a season out.</summary>
    /// <param name="request">What is sown or stands, and what is known.</param>
    /// <returns>The calendar, with the questions that would make it better.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public static Answer<SeasonCalendar> Of(SeasonRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var calendar = new SeasonCalendar(request, SmotherDates.Of(request));
        return Answers.Given(calendar, () => calendar.Findings, () => [.. calendar.Questions()]);
    }

    private IEnumerable<OpenQuestion> Questions()
    {
        bool isVague = request.Weeds is { Way: WeedWay.SmotherCrop, SmotherKind: null } or { Way: WeedWay.OwnWay, Words: null };
        if (isVague || (request is { IsSowing: true, Weeds: null } && request.Ground != GroundWork.FrostSeeded))
        {
            yield return CalendarQuestions.Weeds();
        }

        if (request.Weeds is { Way: WeedWay.Herbicide, LabelDays: null })
        {
            yield return CalendarQuestions.Label();
        }

        if (request.Weeds is { Way: WeedWay.SmotherCrop, SmotherKind: { } kind } && smother is null)
        {
            yield return CalendarQuestions.Smother(kind);
        }

        if (request.IsStanding && request.KillingFrost is null)
        {
            yield return CalendarQuestions.Frost();
        }
    }

    private IEnumerable<Finding> LimeIsLate()
    {
        int starts = CalendarConstants.Days("lime-starts");
        if (
            request is { IsStanding: false, NeedsLime: true, LimeOn: { } limed, SowOn: { } sown }
            && sown.DayNumber - limed.DayNumber is var days
            && days >= 0
            && days < starts
        )
        {
            yield return FindingCatalog.Create(
                CalendarCodes.LimeLate,
                ("limed", CalendarText.Date(limed)),
                ("days", CalendarText.Count(days)),
                ("sown", CalendarText.Date(sown)),
                ("ready", CalendarText.Date(limed.AddDays(starts)))
            );
        }
    }

    private static Finding TooShort(SeasonTask task) =>
        FindingCatalog.Create(
            CalendarCodes.LeadShort,
            ("task", task.Title),
            ("latest", CalendarText.Date(task.Latest!.Value.AddDays(-task.DaysShort))),
            ("earliest", CalendarText.Date(task.Earliest!.Value)),
            ("days", CalendarText.Count(task.DaysShort))
        );

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Around}, {CalendarText.Count(Tasks.Length)} tasks";

    private string Around =>
        SowOn is not { } day ? "season, its day not set"
        : IsStanding ? $"upkeep from {CalendarText.Date(day)}"
        : $"sowing on {CalendarText.Date(day)}";
}
