using System.Collections.Immutable;
using PlotAgronomy.Calendar;

namespace PlotAgronomy.Planning;

/// <summary>The work as it is carried to the field: dated steps with their cautions, walks with the spreader, what to watch, what
/// to write down.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldPlan
{
    private readonly FieldFindings findings;

    private FieldPlan(PlotAnswers answers)
    {
        Walks = PlannedWalks.Of(answers);
        Blanks = RecordBlanks.Of(answers, Walks);
        var work = answers.SeasonWork;
        findings = new(answers.Findings, answers.Verdict.TryGetPart(out var verdict) ? verdict.Said : [], [.. PlacesIn(work)]);
        Steps = [.. work.Select(w => StepOf(w, work, answers.Plan.PlantingDate))];
    }

    /// <summary>Gets the tasks in the order of their days.</summary>
    public ImmutableArray<FieldStep> Steps { get; }

    /// <summary>Gets every walk with the spreader, in the order of the work: lime of the first day, fertilizer, seed.</summary>
    public ImmutableArray<PlannedWalk> Walks { get; }

    /// <summary>Gets what is to be written down, numbered.</summary>
    public ImmutableArray<RecordBlank> Blanks { get; }

    /// <summary>Gets what is to be minded when buying.</summary>
    public ImmutableArray<Finding> Buying => findings.At(WorkPlace.Buying);

    /// <summary>Gets what is to be minded when the spreader is set.</summary>
    public ImmutableArray<Finding> Spreader => findings.At(WorkPlace.Spreader);

    /// <summary>Gets what to watch, most serious first: every warning without a place in the work, and cautions up to five in
    /// all.</summary>
    public ImmutableArray<Finding> Watched => findings.Watched;

    /// <summary>Gets the cautions and notes that change nothing in the work.</summary>
    public ImmutableArray<Finding> Behind => findings.Behind;

    internal static FieldPlan Of(PlotAnswers answers) => new(answers);

    private FieldStep StepOf(SeasonWork work, ImmutableArray<SeasonWork> all, DateOnly? sowing) =>
        new()
        {
            Work = work,
            IsAfterSowing = work.Task.Earliest > sowing,
            Minded =
                PlaceOf(work.Task) is { } place && all.First(w => PlaceOf(w.Task) == place) == work ? findings.At(place) : [],
        };

    /// <summary>What is bought and how the spreader is set have their own parts of a sheet.</summary>
    private static IEnumerable<WorkPlace> PlacesIn(ImmutableArray<SeasonWork> work) =>
        [WorkPlace.Buying, WorkPlace.Spreader, .. work.Select(w => PlaceOf(w.Task)).OfType<WorkPlace>().Distinct()];

    private static WorkPlace? PlaceOf(SeasonTask task) =>
        task.Spreads switch
        {
            SeasonSpread.FirstLime => WorkPlace.Lime,
            SeasonSpread.Fertilizer => WorkPlace.Fertilizer,
            _ when task.Pass is not null => WorkPlace.Sowing,
            _ when task.IsInspection => WorkPlace.Afterwards,
            _ => null,
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Steps.Length, 0)} steps, {Amounts.Print(Walks.Length, 0)} walks, {Amounts.Print(Blanks.Length, 0)} blanks";
}
