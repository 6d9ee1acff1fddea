using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks which changes are taken, writes the plan, reads and solves it again.</summary>
/// <param name="streams">Where to read and write.</param>
/// <param name="takesAll">Whether nothing is asked.</param>
internal sealed class PlanReviewer(ConsoleStreams streams, bool takesAll)
{
    internal int Review(PlotPlan plan, PlotBook book, int year, string source, string target)
    {
        PlanReview review;
        try
        {
            review = PlanReview.Of(plan, book, year);
        }
        catch (ArgumentException refused)
        {
            streams.Error.WriteLine(refused.Message.Split(" (Parameter ")[0]);
            return ExitCode.BadInput;
        }

        var next = review.With([.. review.Changes.Where(Take)]);
        string text = KeptComments.Of(File.ReadAllText(source), Path.GetFileName(source)) + PlanFile.Write(next);
        if (PlanFile.Read(text).Plan is not { } read)
        {
            streams.Error.WriteLine("the next plan could not be read again; nothing was written");
            return ExitCode.BadInput;
        }

        OutputFile.Replace(target, text);
        var answers = read.Solve();
        streams.Out.WriteLine();
        streams.Out.WriteLine($"Written to {target}, read and solved again: {answers}.");
        streams.Out.WriteLine($"{source} stays as it is.");
        return ExitCode.Done;
    }

    /// <summary>Tells a change with its reason and entries, and asks where it is a choice.</summary>
    private bool Take(PlanChange change)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine(
            change.IsMade ? $"{change}."
            : change.Reason == change.To ? $"{change}"
            : $"To decide. {change}"
        );
        if (change.Reason != change.To)
        {
            streams.Out.WriteLine($"  Why: {change.Reason}");
        }

        if (!change.Entries.IsEmpty)
        {
            streams.Out.WriteLine($"  Entries: {string.Join(", ", change.Entries.Select(e => e.Id))}");
        }

        if (!change.IsChoice || takesAll)
        {
            return change.IsMade;
        }

        while (true)
        {
            streams.Out.WriteLine("  Take it? yes or no");
            switch (streams.In.ReadLine()?.Trim().ToLowerInvariant())
            {
                case "yes" or "y":
                    return true;
                case "no" or "n":
                    streams.Out.WriteLine("  Not taken.");
                    return false;
                case null:
                    streams.Out.WriteLine("  Not taken: no answer.");
                    return false;
            }
        }
    }
}
