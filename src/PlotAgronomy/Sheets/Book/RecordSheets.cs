using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sheets;

/// <summary>The sheets of the plot book.</summary>
public static class RecordSheets
{
    extension(FieldSheet)
    {
        /// <summary>Says what the book tells of plots: done, owed, the soil, what grew, what was eaten, next year.</summary>
        /// <param name="histories">The plots, at least one.</param>
        /// <returns>The sheet.</returns>
        /// <exception cref="ArgumentException">No plot.</exception>
        public static FieldSheet Of(params ReadOnlySpan<PlotHistory> histories)
        {
            ImmutableArray<PlotHistory> plots = [.. histories];
            Guard.NotEmpty(plots);
            return HistorySheet.Write(plots);
        }
    }
}
