using Microsoft.CodeAnalysis;

namespace PlotAgronomy.Map.Model;

/// <summary>Enters what an assembly declares into the index, with the calls that stand nowhere in the text.</summary>
internal sealed class Declarations(MemberIndex index)
{
    private readonly List<StandIn> _standIns = [];
    private readonly List<Reference> _construction = [];

    internal IReadOnlyList<StandIn> StandIns => _standIns;

    internal IReadOnlyList<Reference> Construction => _construction;

    internal void Enter(INamespaceOrTypeSymbol container)
    {
        foreach (var symbol in container.GetMembers())
        {
            if (symbol is INamespaceOrTypeSymbol inner)
            {
                Enter(inner);
            }

            if (symbol is not INamespaceSymbol && index.Find(symbol) is { } member)
            {
                EnterStandIns(symbol, member);
                EnterConstruction(symbol, member);
            }
        }
    }

    private void EnterStandIns(ISymbol symbol, CodeMember member)
    {
        foreach (var fulfilled in Contracts.Fulfilled(symbol))
        {
            if (index.Find(fulfilled) is { } called)
            {
                _standIns.Add(new StandIn(called.Id, member.Id));
            }
        }
    }

    private void EnterConstruction(ISymbol symbol, CodeMember member)
    {
        if (symbol is not IMethodSymbol { MethodKind: MethodKind.Constructor or MethodKind.StaticConstructor } constructor)
        {
            return;
        }

        foreach (var run in Model.Construction.RunBy(constructor))
        {
            if (index.Find(run) is { } used)
            {
                _construction.Add(new Reference(member.Id, used.Id, member.File, used.File, member.Line));
            }
        }
    }
}
