using System.Collections.Immutable;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>The plan in hand: its text, its mistakes, and the sheet that comes of it.</summary>
internal sealed class PlanDesk
{
    /// <summary>Long enough for the browser to show what was typed before the sums begin.</summary>
    private static readonly TimeSpan UntilShown = TimeSpan.FromMilliseconds(20);

    private int turns;

    /// <summary>Raised when anything here is another.</summary>
    internal event Action? Changed;

    /// <summary>Gets the text of the plan; empty where none is in hand.</summary>
    internal PlanText Text { get; private set; } = new("");

    internal bool IsInHand { get; private set; }

    /// <summary>Gets every mistake, in the order of the text.</summary>
    internal ImmutableArray<PlanProblem> Problems { get; private set; } = [];

    /// <summary>Gets how that was taken which may be typed in more than one way.</summary>
    internal ImmutableArray<PlanProblem> Taken { get; private set; } = [];

    /// <summary>Gets what is written correctly and hardly meant.</summary>
    internal ImmutableArray<PlanProblem> Doubted { get; private set; } = [];

    /// <summary>Gets the answers; null while there are mistakes or the first sums are not done.</summary>
    internal PlotAnswers? Answers { get; private set; }

    internal FieldSheet? Sheet { get; private set; }

    /// <summary>Gets a value indicating whether the sheet is of the plan as it stood before the last change.</summary>
    internal bool IsWorking { get; private set; }

    /// <summary>Gets a number that is another after each change: what shows the plan takes it, and so is shown anew.</summary>
    internal int Edition { get; private set; }

    /// <summary>Gets how many plans were opened so far: fields of another plan are other fields.</summary>
    internal int Opened { get; private set; }

    /// <summary>Takes the text of the plan as it now stands, and makes its sheet.</summary>
    internal async Task LayAsync(string text)
    {
        int turn = ++turns;
        var read = PlanFile.Read(text);
        (Text, IsInHand, Problems, Taken) = (new(text), true, read.Problems, read.Taken);
        if (read.Plan is not { } plan)
        {
            (Answers, Sheet, Doubted, IsWorking) = (null, null, [], false);
            Tell();
            return;
        }

        IsWorking = true;
        Tell();
        await Task.Delay(UntilShown);
        if (turn == turns)
        {
            Solve(plan, text);
        }
    }

    /// <summary>Lays another plan on the desk.</summary>
    internal Task OpenAsync(string text)
    {
        Opened++;
        (Answers, Sheet, Doubted) = (null, null, []);
        return LayAsync(text);
    }

    /// <summary>Types a value into a field; null leaves the field out.</summary>
    internal Task TypeAsync(PlanPath path, string? json) => LayAsync(Text.With(path, json));

    internal void PutAway()
    {
        turns++;
        (Text, IsInHand, Problems, Taken, Doubted) = (new(""), false, [], [], []);
        (Answers, Sheet, IsWorking) = (null, null, false);
        Tell();
    }

    internal IEnumerable<PlanProblem> ProblemsAt(PlanPath path) => Problems.Where(p => path.Is(p.Path));

    private void Tell()
    {
        Edition++;
        Changed?.Invoke();
    }

    private void Solve(PlotPlan plan, string text)
    {
        Answers = plan.Solve();
        Sheet = FieldSheet.Of(Answers);
        Doubted = PlanSense.Of(plan, text);
        IsWorking = false;
        Tell();
    }
}
