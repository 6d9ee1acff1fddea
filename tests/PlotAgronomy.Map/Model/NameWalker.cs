using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace PlotAgronomy.Map.Model;

/// <summary>Walks one file and notes what each member uses, by name or by a sign that stands for a call.</summary>
internal sealed class NameWalker : CSharpSyntaxWalker
{
    private readonly SemanticModel _model;
    private readonly MemberIndex _index;
    private readonly string _file;
    private readonly Stack<string> _users = [];
    private readonly Dictionary<(string User, string Used), Reference> _references = [];
    private readonly List<string> _notUnderstood = [];
    private SyntaxNode _noted;

    internal NameWalker(SemanticModel model, MemberIndex index)
    {
        _model = model;
        _index = index;
        _file = model.SyntaxTree.FilePath;
        _noted = model.SyntaxTree.GetRoot();
        _users.Push("");
    }

    internal IReadOnlyCollection<Reference> References => _references.Values;

    /// <summary>Gets the names the compiler knew no single meaning for: each may be a missing reference.</summary>
    internal IReadOnlyCollection<string> NotUnderstood => _notUnderstood;

    public override void DefaultVisit(SyntaxNode node)
    {
        bool declares = DeclaredBy(node) is { } member && _index.Find(member) is { } known && Push(known.Id);
        Note(node);
        base.DefaultVisit(node);
        if (declares)
        {
            _users.Pop();
        }
    }

    private bool Push(string user)
    {
        _users.Push(user);
        return true;
    }

    private ISymbol? DeclaredBy(SyntaxNode node) => node switch
    {
        BaseTypeDeclarationSyntax or DelegateDeclarationSyntax or BaseMethodDeclarationSyntax or BasePropertyDeclarationSyntax
            or EnumMemberDeclarationSyntax or CompilationUnitSyntax => _model.GetDeclaredSymbol(node),
        VariableDeclaratorSyntax { Parent.Parent: BaseFieldDeclarationSyntax } => _model.GetDeclaredSymbol(node),
        PrimaryConstructorBaseTypeSyntax { Parent.Parent: TypeDeclarationSyntax type } => PrimaryConstructor(type),
        _ => null,
    };

    private IMethodSymbol? PrimaryConstructor(TypeDeclarationSyntax type) =>
        _model.GetDeclaredSymbol(type)?.InstanceConstructors
            .FirstOrDefault(c => c.DeclaringSyntaxReferences.Any(r => r.GetSyntax() == type));

    private void Note(SyntaxNode node)
    {
        _noted = node;
        switch (node)
        {
            case SimpleNameSyntax name:
                NoteName(name);
                break;
            case AttributeSyntax or ConstructorInitializerSyntax or PrimaryConstructorBaseTypeSyntax
                or BaseObjectCreationExpressionSyntax or CastExpressionSyntax
                or BinaryExpressionSyntax or PrefixUnaryExpressionSyntax or PostfixUnaryExpressionSyntax
                or ElementAccessExpressionSyntax or ElementBindingExpressionSyntax or ImplicitElementAccessSyntax:
                Use(_model.GetSymbolInfo(node).Symbol);
                break;
            case AssignmentExpressionSyntax assignment:
                Use(_model.GetSymbolInfo(assignment).Symbol);
                NoteDeconstruction(_model.GetDeconstructionInfo(assignment));
                break;
            case CommonForEachStatementSyntax loop:
                NoteLoop(loop);
                break;
            case PositionalPatternClauseSyntax clause:
                Use((_model.GetOperation(clause.Parent!) as IRecursivePatternOperation)?.DeconstructSymbol);
                break;
            case InitializerExpressionSyntax initializer when initializer.IsKind(SyntaxKind.CollectionInitializerExpression):
                foreach (var element in initializer.Expressions)
                {
                    Use(_model.GetCollectionInitializerSymbolInfo(element).Symbol);
                }

                break;
        }

        if (node is ExpressionSyntax expression && MayConvert(expression))
        {
            Use(_model.GetConversion(expression).MethodSymbol);
        }
    }

    /// <summary>Types and parts of an expression have no value to convert, and asking would bind them again.</summary>
    private static bool MayConvert(ExpressionSyntax expression) => expression.Parent switch
    {
        MemberAccessExpressionSyntax access when access.Name == expression => false,
        InvocationExpressionSyntax invocation when invocation.Expression == expression => false,
        BaseExpressionColonSyntax or NameEqualsSyntax => false,
        _ => !SyntaxFacts.IsInTypeOnlyContext(expression) && !SyntaxFacts.IsInNamespaceOrTypeContext(expression),
    };

    private void NoteName(SimpleNameSyntax name)
    {
        if (name.IsVar || name.IsNotNull || name.IsUnmanaged || IsNameOf(name) || IsNewAlias(name))
        {
            return;
        }

        if (InvokedBy(name) is { } call
            && _model.GetSymbolInfo(call).Symbol is IMethodSymbol { MethodKind: not MethodKind.DelegateInvoke } called)
        {
            Use(called);
            return;
        }

        var info = _model.GetSymbolInfo(name);
        if (info.Symbol is { } symbol)
        {
            Use(symbol);
        }
        else if (info.CandidateReason == CandidateReason.MemberGroup)
        {
            foreach (var candidate in info.CandidateSymbols)
            {
                Use(candidate);
            }
        }
        else
        {
            _notUnderstood.Add($"{_file}:{LineOf(name)} {name.Identifier.Text}");
        }
    }

    /// <summary>The call whose method is named: asked by name, every extension method would be looked for again.</summary>
    private static InvocationExpressionSyntax? InvokedBy(SimpleNameSyntax name) => name.Parent switch
    {
        InvocationExpressionSyntax invocation when invocation.Expression == name => invocation,
        MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax invocation } access
            when access.Name == name && invocation.Expression == access => invocation,
        MemberBindingExpressionSyntax { Parent: InvocationExpressionSyntax invocation } binding
            when invocation.Expression == binding => invocation,
        _ => null,
    };

    private static bool IsNameOf(SimpleNameSyntax name) =>
        name.Identifier.Text == "nameof" && name.Parent is InvocationExpressionSyntax invocation && invocation.Expression == name;

    private static bool IsNewAlias(SimpleNameSyntax name) => name.Parent is NameEqualsSyntax { Parent: UsingDirectiveSyntax };

    private void NoteLoop(CommonForEachStatementSyntax loop)
    {
        var info = _model.GetForEachStatementInfo(loop);
        Use(info.GetEnumeratorMethod);
        Use(info.MoveNextMethod);
        Use(info.CurrentProperty);
        Use(info.ElementConversion.MethodSymbol);
        if (loop is ForEachVariableStatementSyntax pairs)
        {
            NoteDeconstruction(_model.GetDeconstructionInfo(pairs));
        }
    }

    private void NoteDeconstruction(DeconstructionInfo info)
    {
        Use(info.Method);
        foreach (var inner in info.Nested)
        {
            NoteDeconstruction(inner);
        }
    }

    private void Use(ISymbol? symbol)
    {
        if (_index.Find(symbol) is not { } used)
        {
            return;
        }

        var key = (_users.Peek(), used.Id);
        if (!_references.ContainsKey(key))
        {
            _references.Add(key, new Reference(key.Item1, used.Id, _file, used.File, LineOf(_noted)));
        }
    }

    private int LineOf(SyntaxNode node) => _model.SyntaxTree.GetLineSpan(node.Span).StartLinePosition.Line + 1;
}
