namespace PlotAgronomy.Planning;

/// <summary>One thing that is left out for a budget, what that saves and what it costs.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BudgetCut
{
    internal BudgetCut() { }

    /// <summary>Gets the plot as it was before the cut.</summary>
    public required PlotAnswers Plot { get; init; }

    /// <summary>Gets what is left out, such as <c>urea for the stand</c>.</summary>
    public required string What { get; init; }

    /// <summary>Gets what is lost by it, in words and amounts.</summary>
    public required string Loses { get; init; }

    /// <summary>Gets what it saves of the shared shopping, in the currency of the plans, beside the graver cuts.</summary>
    public decimal Saves { get; internal init; }

    internal CutSort Sort { get; init; }

    /// <summary>Gets the kind that is left out; null where it is something else.</summary>
    internal CropKind? Kind { get; init; }

    /// <summary>What is left out where, and what it saves.</summary>
    /// <returns>Text such as <c>North: urea for the stand, saves 31.00 USD</c>.</returns>
    public override string ToString() => $"{Plot.Plan.Plot.Name}: {What}, saves {Plot.Plan.Currency.Print(Saves)}";

    internal BudgetCut Saving(decimal saves) =>
        new()
        {
            Plot = Plot,
            What = What,
            Loses = Loses,
            Sort = Sort,
            Kind = Kind,
            Saves = saves,
        };
}
