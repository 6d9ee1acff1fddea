using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The work as it is carried to the field: dated steps with their cautions, walks with the spreader, what to ask and to
/// watch, what to write down.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldPlan
{
    private readonly FieldFindings findings;
    private readonly FieldQuestions questions;
    private readonly PlotAnswers answers;

    private FieldPlan(PlotAnswers answers)
    {
        this.answers = answers;
        Walks = PlannedWalks.Of(answers.Plan, answers.Lime.Told, answers.Fertilizer.Told, answers.Spreading.OrNull());
        Blanks = RecordBlanks.Of(answers, Walks);
        var work = answers.SeasonWork;
        findings = new(answers.Findings.Except(answers.Background), Verdict is null ? [] : Verdict.Said, [.. PlacesIn(work)]);
        int lines = FieldFindings.Limit("most-asked-and-watched");
        questions = new(answers.Stakes, lines - findings.LeastWatched);
        Watched = findings.Watched(lines - questions.Lines);
        // The numbered blanks are what is written down.
        Steps = [.. work.Where(w => !w.Task.IsWritingDown).Select(w => StepOf(w, work))];
    }

    /// <summary>Gets the tasks in the order of their days.</summary>
    public ImmutableArray<FieldStep> Steps { get; }

    /// <summary>Gets every walk with the spreader, in the order of the work: lime of the first day, fertilizer, seed.</summary>
    public ImmutableArray<PlannedWalk> Walks { get; }

    /// <summary>Gets what is to be written down, numbered.</summary>
    public ImmutableArray<RecordBlank> Blanks { get; }

    /// <summary>Gets what is asked before buying, most at stake first.</summary>
    public ImmutableArray<QuestionStake> Asked => questions.Asked;

    /// <summary>What must be known before a yes is a yes.</summary>
    internal ImmutableArray<string> Deciding => DecidingQuestions.Of(answers);

    /// <summary>Gets the questions for which there is no room among those with most at stake.</summary>
    public ImmutableArray<QuestionStake> AskedLater => questions.Behind;

    /// <summary>Gets the measured number that is worth measuring again; null where nothing rests on any.</summary>
    public MeasuredStake? Weakest => questions.Weakest;

    /// <summary>Gets what is to be minded when buying.</summary>
    public ImmutableArray<Finding> Buying => findings.At(WorkPlace.Buying);

    /// <summary>Gets what is to be minded when the spreader is set.</summary>
    public ImmutableArray<Finding> Spreader => findings.At(WorkPlace.Spreader);

    /// <summary>Gets what is to be minded when the stand is grazed, cut or hunted over.</summary>
    public ImmutableArray<Finding> Afterwards => findings.At(WorkPlace.Afterwards);

    /// <summary>Gets what to watch, most serious first: every warning without a place in the work, and cautions up to five in
    /// all.</summary>
    public ImmutableArray<Finding> Watched { get; }

    /// <summary>Gets the cautions and notes that change nothing in the work.</summary>
    public ImmutableArray<Finding> Behind => findings.Behind(Watched);

    internal static FieldPlan Of(PlotAnswers answers) => new(answers);

    /// <summary>None where nothing is sown and nothing is known to stand there.</summary>
    private PlotVerdict? Verdict => answers.Verdict.TryGetPart(out var verdict) ? verdict : null;

    /// <summary>What is minded and asked at a place stands at its first step.</summary>
    private FieldStep StepOf(SeasonWork work, ImmutableArray<SeasonWork> all)
    {
        WorkPlace? here = PlaceOf(work.Task) is { } place && all.First(w => PlaceOf(w.Task) == place) == work ? place : null;
        return new()
        {
            Work = work,
            IsAfterSowing = IsAfter(work.Task),
            Minded = here is { } at ? findings.At(at) : [],
            Asked = here is { } there ? questions.At(there) : [],
            Walks = [.. Walks.Where(w => IsOf(w, work))],
        };
    }

    /// <summary>The work of a stand is that of its year.</summary>
    private bool IsAfter(SeasonTask task) =>
        GrownKinds.IsUpkeep(answers.Plan)
            ? task.Earliest?.Year > answers.Plan.PlantingDate?.Year
            : task.IsAfterSowing || task.Earliest > answers.Plan.PlantingDate;

    /// <summary>Whether all that is walked with is spread in this task.</summary>
    private static bool IsOf(PlannedWalk walk, SeasonWork work) =>
        walk.Seed is { } seed
            ? seed.Number == work.Task.Pass
            : work.Materials.Any(m => m.Name == walk.What && Tolerance.AreEqual(m.Mass.Pounds, walk.Pass.Load.Pounds));

    /// <summary>What is bought and how the spreader is set have their own parts of a sheet.</summary>
    private static IEnumerable<WorkPlace> PlacesIn(ImmutableArray<SeasonWork> work) =>
        [
            WorkPlace.Buying,
            WorkPlace.Spreader,
            WorkPlace.Afterwards,
            .. work.Select(w => PlaceOf(w.Task)).OfType<WorkPlace>().Distinct(),
        ];

    private static WorkPlace? PlaceOf(SeasonTask task) =>
        task.Spreads switch
        {
            SeasonSpread.FirstLime => WorkPlace.Lime,
            SeasonSpread.Fertilizer => WorkPlace.Fertilizer,
            SeasonSpread.Nitrogen => WorkPlace.Dressing,
            _ when task.Pass is not null => WorkPlace.Sowing,
            _ when task.IsInoculation => WorkPlace.Inoculating,
            _ => null,
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Steps.Length, 0)} steps, {Amounts.Print(Walks.Length, 0)} walks, "
        + $"{Amounts.Print(Blanks.Length, 0)} blanks";
}
