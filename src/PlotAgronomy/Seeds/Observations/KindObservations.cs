using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Looks up what a kind's file says by figure and method. Whoever asks declares what may stand there: see
/// <see cref="End"/>.</summary>
internal sealed class KindObservations(KindFile file, IEnumerable<KindObservation> observations)
{
    private readonly ILookup<string, KindObservation> byFigure = observations.ToLookup(o => o.Figure);
    private readonly HashSet<string> figuresAsked = new(StringComparer.Ordinal);
    private readonly HashSet<KindObservation> given = [];

    internal string KindId => file.Id;

    /// <summary>The one row of a figure and method; null when there is none.</summary>
    /// <exception cref="DataFormatException">There are two.</exception>
    internal KindObservation? Find(string figure, string? method = null)
    {
        figuresAsked.Add(figure);
        KindObservation? found = null;
        foreach (var observation in byFigure[figure].Where(o => o.Method == method))
        {
            if (found is not null)
            {
                string first = Amounts.Print(found.Line, 0);
                throw observation.Problem("figure", $"{Named(figure, method)} stands twice, first in line {first}");
            }

            found = observation;
            given.Add(observation);
        }

        return found;
    }

    /// <summary>The one row of a figure and method.</summary>
    /// <exception cref="DataFormatException">There is none, or there are two.</exception>
    internal KindObservation Need(string figure, string? method = null) => Find(figure, method) ?? throw Missing(figure, method);

    internal DataFormatException Missing(string figure, string? method) =>
        new(file.Path, 1, "figure", $"{Named(figure, method)} is missing");

    /// <summary>All rows of a figure that may stand several times and has no method.</summary>
    internal IEnumerable<KindObservation> Each(string figure) => All(figure, o => o.Method is null);

    /// <summary>All rows of a figure that may stand several times by each of its methods; the caller reads the method.</summary>
    internal IEnumerable<KindObservation> EachMethod(string figure) => All(figure, o => o.Method is not null);

    /// <summary>Passages that are kept for the reader: no figure is made of them.</summary>
    internal void Passages(string figure)
    {
        foreach (var passage in EachMethod(figure))
        {
            passage.Words();
        }
    }

    /// <summary>All rows of a figure and method, from as many publications as print one.</summary>
    /// <exception cref="DataFormatException">One says what another said already.</exception>
    internal IReadOnlyList<KindObservation> Every(string figure, string? method)
    {
        var rows = All(figure, o => o.Method == method);
        for (int i = 1; i < rows.Count; i++)
        {
            if (rows.Take(i).FirstOrDefault(r => r.Repeats(rows[i])) is { } before)
            {
                string first = Amounts.Print(before.Line, 0);
                throw rows[i].Problem("figure", $"{Named(figure, method)} stands twice, first in line {first}");
            }
        }

        return rows;
    }

    /// <summary>All has been asked for that can be: a row that is left over bears a figure or method that nobody reads.</summary>
    /// <exception cref="DataFormatException">A row is left over.</exception>
    internal void End()
    {
        if (byFigure.SelectMany(o => o).FirstOrDefault(o => !given.Contains(o)) is not { } leftOver)
        {
            return;
        }

        bool isFigureKnown = figuresAsked.Contains(leftOver.Figure);
        throw leftOver.Problem(
            isFigureKnown ? "method" : "figure",
            $"nobody reads {Named(leftOver.Figure, leftOver.Method)}: is it misspelled?"
        );
    }

    private List<KindObservation> All(string figure, Func<KindObservation, bool> fits)
    {
        figuresAsked.Add(figure);
        var fitting = byFigure[figure].Where(fits).ToList();
        given.UnionWith(fitting);
        return fitting;
    }

    private static string Named(string figure, string? method) =>
        method is null ? $"the figure '{figure}'" : $"the figure '{figure}' by the method '{method}'";
}
