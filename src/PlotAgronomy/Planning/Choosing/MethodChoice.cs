using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Which published method answers for a plan, and who chose it.</summary>
/// <typeparam name="T">A lime method or a recommendation system.</typeparam>
[JsonConverter(typeof(NotForJson))]
public sealed class MethodChoice<T>
    where T : class
{
    private readonly string who;

    internal MethodChoice(T? chosen, ChosenBy by, string who, ImmutableArray<T> fitting)
    {
        Chosen = chosen;
        By = by;
        this.who = who;
        Fitting = fitting;
    }

    /// <summary>Gets the method; null where none fits the report, or several do and nothing tells which.</summary>
    public T? Chosen { get; }

    /// <summary>Gets who chose it.</summary>
    public ChosenBy By { get; }

    /// <summary>Gets the checked methods that read the report, the chosen one among them; of several that nothing tells apart,
    /// those to be held beside each other.</summary>
    public ImmutableArray<T> Fitting { get; }

    /// <summary>Gets why it was taken, or why none was, in words.</summary>
    public string Reason =>
        By switch
        {
            ChosenBy.Plan => "as the plan names it",
            ChosenBy.PrintedRecommendation => $"because the printed recommendation is of {who}",
            ChosenBy.Laboratory => $"because the report is of {who}",
            ChosenBy.Place => $"because the plot lies in {who}",
            ChosenBy.NothingElseReads => "common practice, and rough: no institution's method reads this report",
            _ when Fitting.IsEmpty => "none that is known reads this report",
            _ => "several read this report, and neither laboratory nor place says which",
        };

    /// <summary>A method that is named.</summary>
    internal static MethodChoice<T> Named(T method) => new(method, ChosenBy.Plan, "", [method]);

    /// <summary>The method and who chose it.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Chosen is { } chosen ? $"{chosen}, {Reason}" : Reason;
}
