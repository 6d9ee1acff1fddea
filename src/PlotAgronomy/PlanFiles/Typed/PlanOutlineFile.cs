using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;

namespace PlotAgronomy.PlanFiles;

/// <summary>Takes the outline of a plot from a file that the plan names; the caller opens it.</summary>
internal static class PlanOutlineFile
{
    /// <summary>The outline; of several in the file, the one that has the name of the plot.</summary>
    /// <param name="at">Part of the plan that names the file.</param>
    /// <param name="file">Field with its name.</param>
    /// <param name="plotName">Name of the plot; null where it is not known.</param>
    internal static PlotOutline Read(PlanPart at, PlanField<string> file, string? plotName)
    {
        string name = at.Get(file);
        if (at.Reading?.Open is not { } open)
        {
            throw at.Report(file, "files named in a plan are not opened here: list the corners as 'outline' in its place");
        }

        if (open(name) is not { } text)
        {
            throw at.Report(file, $"the file '{name}' cannot be opened; it must lie in the folder of the plan or below it");
        }

        ImmutableArray<PlotOutline> outlines;
        try
        {
            outlines = PlotOutline.Read(text, name);
        }
        catch (DataFormatException broken)
        {
            throw at.Report(file, broken.Message.ReplaceLineEndings(" "));
        }

        if (outlines is [var only])
        {
            return only;
        }

        var named = outlines.Where(o => string.Equals(o.Name, plotName, StringComparison.OrdinalIgnoreCase)).ToList();
        string names = string.Join(", ", outlines.Select(o => o.Name.Length == 0 ? "one without a name" : o.Name));
        return named is [var one]
            ? one
            : throw at.Report(
                file,
                $"'{name}' holds {Amounts.Print(outlines.Length, 0)} outlines ({names}): which one? Give the plot its name"
            );
    }
}
